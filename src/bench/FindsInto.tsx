import type { IntoQuestion } from '../../shared/finds-in/index.ts';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { say } from '../../shared/words/index.ts';
import type { IntoTold } from './protocol.ts';
import { QuestionsList } from './QuestionsList.tsx';

interface Props {
  readonly into: IntoTold;
  /** True where finds are ready and the site's files cannot take them. */
  readonly isUnwritten: boolean;
  readonly answer: (question: IntoQuestion, value: string, reach: 'cell' | 'equal') => void;
  readonly leaveOut: (row: number) => void;
}

/** What becomes of a list in a site that is there: counts, what is asked, what would be made, what is there already. */
export function FindsInto({ into, isUnwritten, answer, leaveOut }: Props) {
  const { name: site, counts, questions, places, rows, errors } = into;
  const same = rows.filter(({ outcome }) => outcome === 'same');
  const replaced = rows.filter(({ outcome }) => outcome === 'replaced');
  const made = places.map(({ pit, context }) => say(words.intoFill, { pit, context })).join(', ');
  return (
    <>
      <p data-into={into.site}>
        <strong>{say(words.into, { ...counts, count: counts.fresh, site })}</strong>
      </p>
      {errors > 0 && <p role="alert">{say(words.intoErrors, { site, count: errors })}</p>}
      {isUnwritten && <p role="alert">{say(words.intoUnwritten, { site })}</p>}
      {questions.length > 0 && (
        <QuestionsList
          label={words.intoQuestions}
          left={words.intoQuestionsLeft}
          questions={questions}
          answer={answer}
          leaveOut={leaveOut}
        />
      )}
      {made !== '' && <p class="small">{say(words.intoPlaces, { places: made })}</p>}
      {same.length > 0 && (
        <details>
          <summary>{words.intoSame}</summary>
          <ul class="prose-list small">
            {same.map(({ row, reason }) => (
              <li key={row}>{say(words.leftOutRow, { row, reason: reason ?? '' })}</li>
            ))}
          </ul>
        </details>
      )}
      {replaced.length > 0 && (
        <details>
          <summary>{words.intoReplaced}</summary>
          <ul class="prose-list small">
            {replaced.map(({ row, find }) => (
              <li key={row}>{say(words.intoReplacedRow, { row, find: find?.id ?? '' })}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
