interface Props {
  readonly count: number;
  readonly labels: { readonly exact: string; readonly more: string; readonly fewer: string };
  readonly onCount: (count: number) => void;
}

/** How many hands went up: keyed in, or one more, one fewer. */
export function Hands({ count, labels, onCount }: Props) {
  return (
    <div class="hands">
      <button type="button" class="press" aria-label={labels.fewer} onClick={() => onCount(count - 1)}>
        −
      </button>
      <input
        class="hands-count numbers"
        type="number"
        inputMode="numeric"
        min={0}
        max={99}
        aria-label={labels.exact}
        value={count}
        onInput={(event) => onCount(Number(event.currentTarget.value) || 0)}
      />
      <button type="button" class="press" aria-label={labels.more} onClick={() => onCount(count + 1)}>
        +
      </button>
    </div>
  );
}
