import type { ComponentChildren } from 'preact';
import { say, type Template } from '../../shared/words/index.ts';
import { Hands } from './Hands.tsx';

interface Props {
  readonly label: string;
  /** `said` names the choice where it is told aloud. */
  readonly choices: readonly {
    readonly id: string;
    readonly said: string;
    readonly face: ComponentChildren;
  }[];
  readonly isHands: boolean;
  readonly counts: Readonly<Record<string, number>>;
  /** With one place, for the name of the choice. */
  readonly words: { readonly exact: Template; readonly more: Template; readonly fewer: Template };
  readonly onChoose: (id: string) => void;
  readonly onCount: (id: string, count: number) => void;
}

/** One choice of several, none of them right: one is pressed, or hands are keyed in for each. */
export function ChooseOne({ label, choices, isHands, counts, words, onChoose, onCount }: Props) {
  return (
    <div role="group" aria-label={label}>
      <ul class="choose">
        {choices.map(({ id, said, face }) => (
          <li key={id}>
            {isHands ? (
              <div class="choose-hands">
                <span class="choose-face">{face}</span>
                <Hands
                  count={counts[id] ?? 0}
                  labels={{
                    exact: say(words.exact, { answer: said }),
                    more: say(words.more, { answer: said }),
                    fewer: say(words.fewer, { answer: said }),
                  }}
                  onCount={(count) => onCount(id, count)}
                />
              </div>
            ) : (
              <button
                type="button"
                class="choose-one"
                data-choice={id}
                aria-pressed={(counts[id] ?? 0) > 0}
                onClick={() => onChoose(id)}
              >
                <span class="choose-face">{face}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
