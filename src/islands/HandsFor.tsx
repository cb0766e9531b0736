import { say } from '../../shared/words/index.ts';
import type { CompareWords } from '../../shared/telling/compare-words.ts';

interface Props {
  readonly words: CompareWords;
  readonly answer: string;
  readonly count: number;
  readonly onCount: (hands: number) => void;
}

/** Hands up: the lead keys in how many hands went up for one answer. */
export function HandsFor({ words, answer, count, onCount }: Props) {
  return (
    <div class="hands">
      <button
        type="button"
        class="press"
        aria-label={say(words.handsFewer, { answer })}
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
        aria-label={say(words.handsFor, { answer })}
        value={count}
        onInput={(event) => onCount(Number(event.currentTarget.value) || 0)}
      />
      <button
        type="button"
        class="press"
        aria-label={say(words.handsMore, { answer })}
        onClick={() => onCount(count + 1)}
      >
        +
      </button>
    </div>
  );
}
