/** Optimal string alignment distance: insertions, removals, changes and swaps of neighbours each cost 1. */
function editDistance(from: string, to: string): number {
  const rows: number[][] = [Array.from({ length: to.length + 1 }, (_, column) => column)];
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const cost = from[row - 1] === to[column - 1] ? 0 : 1;
      let best = Math.min(
        (rows[row - 1]?.[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (rows[row - 1]?.[column - 1] ?? 0) + cost,
      );
      if (row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]) {
        best = Math.min(best, (rows[row - 2]?.[column - 2] ?? 0) + 1);
      }
      current.push(best);
    }
    rows.push(current);
  }
  return rows[from.length]?.[to.length] ?? Math.max(from.length, to.length);
}

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, '-');

/**
 * The known word nearest to what was written, or null where none is near (a third of its length, at least one slip).
 * Capitals, spaces and underscores do not count as slips.
 *
 * @example nearest('grond', ['flaked', 'ground']) // 'ground'
 */
export function nearest(written: string, known: readonly string[]): string | null {
  const wanted = plain(written.slice(0, 60));
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const word of known) {
    const candidate = plain(word);
    if (Math.abs(candidate.length - wanted.length) >= bestDistance) continue;
    const distance = editDistance(wanted, candidate);
    if (distance < bestDistance) {
      best = word;
      bestDistance = distance;
    }
  }
  return best;
}
