import { percentOf, placeOf, valueAt, type ShownLine } from './line-scale.ts';

const COLUMNS = 40;
const STEP = 9;
const MOST_HIGH = 20;

interface Props {
  readonly line: ShownLine;
  readonly numbers: readonly number[];
}

/** Everyone's answer as a dot, piled where they fall together. The numbers stand in words beside it. */
export function DotPile({ line, numbers }: Props) {
  const piles = new Map<number, number>();
  for (const number of numbers) {
    const column = Math.round(COLUMNS * placeOf(line, number));
    piles.set(column, (piles.get(column) ?? 0) + 1);
  }
  const highest = Math.max(3, ...piles.values());
  const step = highest > MOST_HIGH ? (STEP * MOST_HIGH) / highest : STEP;
  const height = Math.ceil(step * highest) + 6;
  return (
    <svg class="dot-pile" width="100%" height={height} aria-hidden="true">
      {[...piles].flatMap(([column, count]) =>
        Array.from({ length: count }, (_, index) => (
          <circle
            key={`${column}-${index}`}
            class="dot"
            cx={percentOf(line, valueAt(line, column / COLUMNS))}
            cy={height - 4 - step * index}
            r="3.6"
          />
        )),
      )}
    </svg>
  );
}
