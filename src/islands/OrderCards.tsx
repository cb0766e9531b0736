import { say } from '../../shared/words/index.ts';
import { laidCards, type OrderStore, type OrderTable } from '../stores/order.ts';
import type { OrderProps } from './order-view.ts';
import { StepFace } from './StepFace.tsx';

interface Props extends Pick<OrderProps, 'activity' | 'words' | 'drawn'> {
  readonly table: OrderTable;
  readonly store: OrderStore;
  readonly onLift: (card: string, byKey: boolean) => void;
}

/** The cards that do not lie on the line yet; with hands up each has its count of hands. */
export function OrderCards({ activity, words, drawn, table, store, onLift }: Props) {
  const laid = laidCards(table.line);
  const left = activity.steps.filter(({ id }) => !laid.includes(id));
  if (left.length === 0) return <p class="quiet">{say(words.cardsDone)}</p>;
  return (
    <ul class="step-cards" aria-label={say(words.cardsTitle)} data-drawn={drawn.length > 0}>
      {left.map((step) => {
        const face = <StepFace activity={activity.id} step={step} isDrawn={drawn.includes(step.id)} />;
        return (
          <li key={step.id}>
            {table.way === 'hands' ? (
              <div class="step-card">
                {face}
                <Hands
                  words={words}
                  letter={step.letter}
                  count={table.hands[step.id] ?? 0}
                  onCount={(count) => store.countHands(step.id, count)}
                />
              </div>
            ) : (
              <button
                type="button"
                class="step-card"
                data-card={step.id}
                aria-pressed={table.hand === step.id}
                onClick={(event) => onLift(step.id, event.detail === 0)}
              >
                <span class="unseen">{say(words.card)} </span>
                {face}
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

interface HandsProps extends Pick<OrderProps, 'words'> {
  readonly letter: string;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

function Hands({ words, letter, count, onCount }: HandsProps) {
  return (
    <span class="hands">
      <button
        type="button"
        class="press"
        aria-label={say(words.handsFewer, { letter })}
        onClick={() => onCount(count - 1)}
      >
        −
      </button>
      <input
        class="hands-count numbers"
        type="number"
        inputMode="numeric"
        min={0}
        max={99}
        aria-label={say(words.handsFor, { letter })}
        value={count}
        onInput={(event) => onCount(Number(event.currentTarget.value) || 0)}
      />
      <button
        type="button"
        class="press"
        aria-label={say(words.handsMore, { letter })}
        onClick={() => onCount(count + 1)}
      >
        +
      </button>
    </span>
  );
}
