import { say } from '../../shared/words/index.ts';
import type { OrderStep } from '../../shared/activities/scorers.ts';
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
    <ol class="line" aria-label={say(words.lineTitle)}>
      {line.map((card, index) => {
        const step = activity.steps.find(({ id }) => id === card) ?? null;
        const place = index + 1;
        const isEmpty = step === null || card === hand;
        const face = step !== null && (
          <StepFace activity={activity.id} step={step} isDrawn={drawn.includes(step.id)} />
        );
        return (
          <li
            key={index}
            class="line-place"
            data-state={step === null ? 'empty' : card === hand ? 'held' : 'laid'}
            data-open={held !== null}
          >
            <span class="line-number numbers" aria-hidden="true">
              {place}
            </span>
            {held !== null ? (
              <button
                type="button"
                class="line-card"
                data-place={place}
                data-state={isEmpty ? 'empty' : 'laid'}
                onClick={(event) => moves.place(index, event.detail === 0)}
              >
                <span class="unseen">
                  {say(isEmpty ? words.placeHere : words.placeTaken, { place, letter: held.letter })}{' '}
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
                  <Move by={-1} isEnd={index === 0} {...{ step, words, index, moves }} />
                  <Move by={1} isEnd={index === last} {...{ step, words, index, moves }} />
                </span>
              </>
            )}
          </li>
        );
      })}
    </ol>
  );
}

interface MoveProps extends Pick<Props, 'words' | 'moves'> {
  readonly by: -1 | 1;
  readonly step: OrderStep;
  readonly index: number;
  readonly isEnd: boolean;
}

/** One place earlier or later. */
function Move({ by, step, words, index, isEnd, moves }: MoveProps) {
  const isEarlier = by === -1;
  return (
    <button
      type="button"
      class="press line-move"
      data-by={by}
      data-of={step.id}
      aria-disabled={isEnd}
      onClick={() => moves.move(index, by)}
    >
      <span class="unseen">
        {say(isEarlier ? words.moveEarlier : words.moveLater, { letter: step.letter })}
      </span>
      <span aria-hidden="true">
        {isEarlier ? '↑' : '↓'}
        <span class="line-word"> {say(isEarlier ? words.earlier : words.later)}</span>
      </span>
    </button>
  );
}
