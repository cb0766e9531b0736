import { packRows, type PackedRows } from './bits.ts';

/** Larger tables have too many others to look at, and would go too deep. ASM. */
const MOST_CELLS = 1000;

/**
 * Visits every table of presence that has the margins of the one given, once each; null, having visited some, where there
 * are more than `limit`, or more than a thousand cells.
 *
 * Row by row, depth first; a kind that could no longer be placed as often as it must ends its branch.
 * @returns How many tables there are.
 */
export function eachTableWithMargins(
  given: readonly (readonly number[])[],
  limit: number,
  visit: (packed: PackedRows) => void,
): number | null {
  const kinds = [...(given[0] ?? []).keys()];
  if (given.length * kinds.length > MOST_CELLS) return null;
  const held = given.map((row) => row.filter((count) => count > 0).length);
  const left = kinds.map((kind) => given.filter((row) => (row[kind] ?? 0) > 0).length);
  const packed = packRows(given.map((row) => row.map(() => 0)));
  let tables = 0;
  let steps = 0;

  const place = (pit: number, kind: number, toPlace: number): boolean => {
    steps += 1;
    // Branches that come to nothing are few, but they must not run on for ever either.
    if (steps > limit * (given.length * kinds.length + 1)) return false;
    if (pit === given.length) {
      tables += 1;
      if (tables > limit) return false;
      visit(packed);
      return true;
    }
    if (kind === kinds.length) return toPlace > 0 || place(pit + 1, 0, held[pit + 1] ?? 0);
    if (toPlace > kinds.length - kind) return true;
    const wanted = left[kind] ?? 0;
    const word = pit * packed.words + (kind >>> 5);
    if (wanted < given.length - pit && !place(pit, kind + 1, toPlace)) return false;
    if (wanted === 0 || toPlace === 0) return true;
    left[kind] = wanted - 1;
    packed.bits[word] = (packed.bits[word] ?? 0) | (1 << (kind & 31));
    const isDone = place(pit, kind + 1, toPlace - 1);
    packed.bits[word] = (packed.bits[word] ?? 0) & ~(1 << (kind & 31));
    left[kind] = wanted;
    return isDone;
  };
  return place(0, 0, held[0] ?? 0) ? tables : null;
}
