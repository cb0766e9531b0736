import type { CompareStore, CompareTable } from '../stores/compare.ts';
import type { CompareWords } from '../../shared/telling/compare-words.ts';
import { HandsFor } from './HandsFor.tsx';

interface Props {
  readonly words: CompareWords;
  readonly ask: string;
  readonly question: string;
  readonly answers: readonly { readonly answer: string; readonly name: string }[];
  readonly table: CompareTable;
  readonly store: CompareStore;
}

/** A question with its answers: one is pressed, or hands are keyed in for each. */
export function Choices({ words, ask, question, answers, table, store }: Props) {
  const said = table.said[question] ?? {};
  return (
    <div class="choices" role="group" aria-label={ask} data-asks={question}>
      <p class="choices-ask">{ask}</p>
      <div class="choices-answers">
        {answers.map(({ answer, name }) =>
          table.way === 'hands' ? (
            <div key={answer} class="choices-hands">
              <span>{name}</span>
              <HandsFor
                words={words}
                answer={name}
                count={said[answer] ?? 0}
                onCount={(hands) => store.countHands(question, answer, hands)}
              />
            </div>
          ) : (
            <button
              key={answer}
              type="button"
              class="press choices-answer"
              aria-pressed={(said[answer] ?? 0) > 0}
              onClick={() => store.answer(question, answer)}
            >
              {name}
            </button>
          ),
        )}
      </div>
    </div>
  );
}
