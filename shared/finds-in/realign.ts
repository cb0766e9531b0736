/** More cells over than this cannot be put back by fitting. ASM. */
const MOST_OVER = 6;
/** What joining two cells costs, in fit. ASM. */
const JOINT_PRICE = 0.3;

/**
 * Puts a row with too many cells back into its columns: neighbours that an unquoted comma parted are joined where that
 * makes each cell fit its column best (dynamic programming over cells and columns). Null where it is too far out.
 *
 * @param fit How well a text fits a column, from -1 to 1.
 */
function realign(
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
        const price = took === 1 ? 0 : JOINT_PRICE + (parts.some((part) => part === '') ? 0.6 : 0);
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

/**
 * The cells of a row, as many as there are columns at most: empty cells at its end fall away, or neighbours are joined,
 * whichever fits the columns better. What can neither fall away nor be joined stays, in one cell, at the end.
 *
 * @param fit How well a text fits a column, from -1 to 1.
 */
export function refit(
  cells: readonly string[],
  columnCount: number,
  joint: string,
  fit: (text: string, column: number) => number,
): { readonly cells: readonly string[]; readonly isRefitted: boolean } {
  if (cells.length <= columnCount) return { cells, isRefitted: false };
  const sum = (row: readonly string[]): number =>
    row.reduce((total, text, column) => total + fit(text, column), 0);
  const cut = cells.slice(columnCount).every((cell) => cell === '') ? cells.slice(0, columnCount) : null;
  const joined = realign(cells, columnCount, joint, fit);
  // Joining must be the better fit by more than it costs.
  if (cut !== null && (joined === null || sum(cut) >= sum(joined) - JOINT_PRICE))
    return { cells: cut, isRefitted: false };
  const last = Math.max(0, columnCount - 1);
  return { cells: joined ?? [...cells.slice(0, last), cells.slice(last).join(joint)], isRefitted: true };
}
