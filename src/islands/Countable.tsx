import { say } from '../../shared/words/index.ts';
import type { EstimateWords } from './estimate-view.ts';

interface Props {
  readonly words: EstimateWords;
  readonly what: string;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

/** How many hands: typed, or one more and one fewer. */
export function Countable({ words, what, count, onCount }: Props) {
  return (
    <span class="hands">
      <button
        type="button"
        class="press"
        aria-label={say(words.handsFewer, { what })}
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
        value={count}
        aria-label={say(words.handsFor, { what })}
        onInput={({ currentTarget }) => onCount(currentTarget.valueAsNumber)}
      />
      <button
        type="button"
        class="press"
        aria-label={say(words.handsMore, { what })}
        onClick={() => onCount(count + 1)}
      >
        +
      </button>
    </span>
  );
}
