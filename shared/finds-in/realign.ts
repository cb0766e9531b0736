/** More cells over than this cannot be put back by fitting. ASM. */
const MOST_OVER = 6;

/**
 * Puts a row with too many cells back into its columns: neighbours that an unquoted comma parted are joined where that
 * makes each cell fit its column best (dynamic programming over cells and columns). Null where it is too far out.
 *
 * @param fit How well a text fits a column, from -1 to 1.
 */
export function realign(
  cells: readonly string[],
  columnCount: number,
  joint: string,
  fit: (text: string, column: number) => number,
): readonly string[] | null {
  const over = cells.length - columnCount;
  if (over > MOST_OVER || over < 1 || columnCount < 2) return null;
  // best[column][cell]: the best fit of the first `cell` cells in the first `column` columns, and how many the last took.
  const best: { merit: number; took: number }[][] = Array.from({ length: columnCount + 1 }, () =>
    Array.from({ length: cells.length + 1 }, () => ({ merit: -Infinity, took: 0 })),
  );
  const origin = best[0]?.[0];
  if (origin !== undefined) origin.merit = 0;
  for (let column = 1; column <= columnCount; column += 1) {
    for (let end = column; end <= Math.min(cells.length, column + over); end += 1) {
      for (let took = 1; took <= Math.min(over + 1, end); took += 1) {
        const before = best[column - 1]?.[end - took]?.merit ?? -Infinity;
        if (before === -Infinity) continue;
        const parts = cells.slice(end - took, end);
        // Joining is a last resort, and two empty cells are never one.
        const price = took === 1 ? 0 : 0.3 + (parts.some((part) => part === '') ? 0.6 : 0);
        const merit = before + fit(parts.join(joint), column - 1) - price;
        const slot = best[column]?.[end];
        if (slot !== undefined && merit > slot.merit) Object.assign(slot, { merit, took });
      }
    }
  }
  const joined: string[] = [];
  let end = cells.length;
  for (let column = columnCount; column > 0; column -= 1) {
    const took = best[column]?.[end]?.took ?? 0;
    if (took === 0) return null;
    joined.unshift(cells.slice(end - took, end).join(joint));
    end -= took;
  }
  return joined;
}
