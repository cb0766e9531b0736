import { say } from '../../shared/words/index.ts';
import type { CompareWords } from '../../shared/telling/compare-words.ts';

interface Props {
  readonly words: CompareWords;
  readonly values: readonly number[];
  /** The top of the scale: 1 or 200. */
  readonly most: number;
  readonly real: number;
  /** What was said, on the same scale; null where nothing was. */
  readonly said: number | null;
}

const COLUMNS = 24;
const COLUMN_WIDTH = 20;
const DOTS_HIGH = 26;
const DOT = 8;
const LEFT = 30;
const TOP = 44;
const WIDTH = COLUMNS * COLUMN_WIDTH;
const FLOOR = TOP + DOTS_HIGH * DOT;

/** How many shuffles one dot stands for, so that the highest column still fits. */
export const shufflesPerDot = (highest: number): number => Math.max(1, Math.ceil(highest / DOTS_HIGH));

const columnOf = (value: number, most: number): number =>
  Math.min(COLUMNS - 1, Math.floor((value / most + 1e-9) * COLUMNS));

/** How high each column of the pile is, in shuffles. */
export function pileColumns(values: readonly number[], most: number): readonly number[] {
  const columns = Array.from({ length: COLUMNS }, () => 0);
  for (const value of values) {
    const column = columnOf(value, most);
    columns[column] = (columns[column] ?? 0) + 1;
  }
  return columns;
}

/** The growing pile: each dot some shuffles, with the likeness as dug and the one said marked by line, shape and word. */
export function ShufflePile({ words, values, most, real, said }: Props) {
  const columns = pileColumns(values, most);
  const perDot = shufflesPerDot(Math.max(0, ...columns));
  const middle = (column: number): number => LEFT + (column + 0.5) * COLUMN_WIDTH;
  const at = (value: number): number => middle(columnOf(value, most));
  const flag = (x: number): 'start' | 'middle' | 'end' =>
    x < LEFT + WIDTH * 0.15 ? 'start' : x > LEFT + WIDTH * 0.85 ? 'end' : 'middle';
  return (
    <svg
      class="pile"
      viewBox={`0 0 ${WIDTH + 2 * LEFT} ${FLOOR + 34}`}
      role="img"
      aria-label={say(words.pileLabel)}
    >
      {columns.flatMap((count, column) =>
        Array.from({ length: Math.ceil(count / perDot) }, (_, dot) => (
          <circle
            key={`${column} ${dot}`}
            class="pile-dot"
            data-beyond={middle(column) >= at(real)}
            cx={middle(column)}
            cy={FLOOR - (dot + 0.5) * DOT}
            r={DOT / 2 - 0.6}
          />
        )),
      )}
      <path class="pile-floor" d={`M${LEFT} ${FLOOR}h${WIDTH}`} />
      <path class="pile-real" d={`M${at(real)} ${TOP - 20}V${FLOOR}`} />
      <text class="pile-word" x={at(real)} y={TOP - 26} text-anchor={flag(at(real))}>
        {say(words.pileReal)}
      </text>
      {said !== null && (
        <>
          <path class="pile-said" d={`M${at(said)} ${FLOOR + 2}l7 12h-14z`} />
          <text class="pile-word" x={at(said)} y={FLOOR + 30} text-anchor={flag(at(said))}>
            {say(words.pileYours)}
          </text>
        </>
      )}
      {(said === null || flag(at(said)) !== 'start') && (
        <text class="pile-end" x={LEFT} y={FLOOR + 30}>
          {say(words.pileLess)}
        </text>
      )}
      {(said === null || flag(at(said)) !== 'end') && (
        <text class="pile-end" x={LEFT + WIDTH} y={FLOOR + 30} text-anchor="end">
          {say(words.pileMore)}
        </text>
      )}
    </svg>
  );
}
