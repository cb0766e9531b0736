import { say } from '../../shared/words/index.ts';
import type { OrderTable } from '../stores/order.ts';
import type { OrderProps } from './order-view.ts';
import { StepFace } from './StepFace.tsx';
import type { OrderMoves } from './use-order-moves.ts';

interface Props extends Pick<OrderProps, 'activity' | 'words' | 'drawn'> {
  readonly table: OrderTable;
  readonly moves: OrderMoves;
}

/** The line: a place for each card. While a card is in the hand every place takes it; otherwise cards lift and move. */
export function OrderLine({ activity, words, drawn, table, moves }: Props) {
  const { line, hand } = table;
  const held = activity.steps.find(({ id }) => id === hand) ?? null;
  const last = line.length - 1;
  return (
    <ol class="line"
                onClick={(event) => moves.place(index, event.detail === 0)}
              >
                <span class="unseen">
                  {say(step === null || card === hand ? words.placeHere : words.placeTaken, { place, letter: held.letter })}{' '}
                </span>
                {face}
              </button>
            ) : step === null ? (
              <span class="line-card quiet">
                <span class="unseen">{say(words.placeNumber, { place })}: </span>
                {say(index === 0 ? words.first : index === last ? words.last : words.placeEmpty)}
              </span>
            ) : (
              <>
                <button
                  type="button"
                  class="line-card"
                  data-place={place}
                  data-card={step.id}
                  onClick={(event) => moves.lift(step.id, event.detail === 0)}
                >
                  <span class="unseen">{say(words.lift, { place })} </span>
                  {face}
                </button>
                <span class="line-moves">
                  {([-1, 1] as const).map((by) => (
                    <button
                      key={by}
                      type="button"
                      class="press line-move"
                      data-by={by}
                      data-of={step.id}
                      aria-disabled={by === -1 ? index === 0 : index === last}
                      onClick={() => moves.move(index, by)}
                    >
                      <span class="unseen">{say(by === -1 ? words.moveEarlier : words.moveLater, { letter: step.letter })}</span>
                      <span aria-hidden="true">
                        {by === -1 ? '↑' : '↓'}
                        <span class="line-word"> {say(by === -1 ? words.earlier : words.later)}</span>
                      </span>
                    </button>
                  ))}
                </span>
              </>
            )}
          </li>
        );
      })}
    </ol>
  );
}
