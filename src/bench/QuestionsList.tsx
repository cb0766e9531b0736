import { useState } from 'preact/hooks';
import type { IntoQuestion, Question } from '../../shared/finds-in/index.ts';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { say, type Template } from '../../shared/words/index.ts';

interface Props<Asked extends Question | IntoQuestion> {
  readonly label: string;
  /** How many there are, by `count`, and how many are shown. */
  readonly left: Template;
  readonly questions: readonly Asked[];
  readonly answer: (question: Asked, value: string, reach: 'cell' | 'equal') => void;
  readonly leaveOut: (row: number) => void;
}

const SHOWN = 6;

/** What the lead is asked, row by row: what finds wait for comes first. */
export function QuestionsList<Asked extends Question | IntoQuestion>({
  label,
  left,
  questions,
  answer,
  leaveOut,
}: Props<Asked>) {
  const inOrder = questions.toSorted((a, b) => Number(b.isBlocking) - Number(a.isBlocking) || a.row - b.row);
  const shown = inOrder.slice(0, SHOWN);
  return (
    <section aria-label={label}>
      <p role="status">
        {questions.length === 0
          ? words.questionsNone
          : say(left, { count: questions.length, shown: shown.length })}
      </p>
      <ol class="questions">
        {shown.map((question) => (
          <OneQuestion
            key={`${question.row} ${question.field} ${question.reason}`}
            question={question}
            answer={answer}
            leaveOut={leaveOut}
          />
        ))}
      </ol>
    </section>
  );
}

interface OneProps<Asked extends Question | IntoQuestion> extends Pick<Props<Asked>, 'answer' | 'leaveOut'> {
  readonly question: Asked;
}

function OneQuestion<Asked extends Question | IntoQuestion>({ question, answer, leaveOut }: OneProps<Asked>) {
  const [isForAll, setForAll] = useState(question.isShared);
  const [other, setOther] = useState('');
  const { row, header, asked, proposals, taken, isBlocking, isShared, received } = question;
  const give = (value: string): void => {
    answer(question, value, isShared && isForAll ? 'equal' : 'cell');
  };
  const id = `question-${row}-${question.field}-${question.reason}`;
  return (
    <li class="question">
      <p id={id}>
        <span class="small quiet">{say(words.questionRow, { row, header })}</span>
        <br />
        {asked}{' '}
        <span class="small quiet">
          {isBlocking ? words.questionWaits : say(words.questionTaken, { taken: taken ?? '–' })}
        </span>
      </p>
      <div class="lead-acts" role="group" aria-labelledby={id}>
        {proposals.map(({ value, label }) => (
          <button
            key={value}
            type="button"
            class="press small"
            onClick={() => {
              give(value);
            }}
          >
            {label === '' ? words.questionLeaveValue : label}
          </button>
        ))}
        <form
          class="question-other"
          onSubmit={(event) => {
            event.preventDefault();
            if (other.trim() !== '') give(other.trim());
          }}
        >
          <input
            type="text"
            aria-label={words.questionOther}
            placeholder={words.questionOther}
            autocomplete="off"
            value={other}
            onInput={({ currentTarget }) => {
              setOther(currentTarget.value);
            }}
          />
          <button type="submit" class="press small">
            {words.questionSay}
          </button>
        </form>
        <button
          type="button"
          class="form-out small"
          onClick={() => {
            leaveOut(row);
          }}
        >
          {words.questionLeaveRow}
        </button>
        {isShared && received !== '' && (
          <label class="small question-same">
            <input
              type="checkbox"
              checked={isForAll}
              onChange={({ currentTarget }) => {
                setForAll(currentTarget.checked);
              }}
            />{' '}
            {say(words.questionSame, { received })}
          </label>
        )}
      </div>
    </li>
  );
}
