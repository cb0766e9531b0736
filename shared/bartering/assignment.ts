/**
 * The assignment of rows to columns with the greatest sum, each column used once.
 *
 * Source: Kuhn 1955, Naval Research Logistics Quarterly 2: 83-97, in the shortest-path form with potentials
 * (Tomizawa 1971; Jonker & Volgenant 1987, Computing 38: 325-340). Grows with the cube of the size.
 *
 * @param worth a square table of finite numbers.
 * @returns for each row its column.
 * @throws RangeError when the table is not square or holds a number that is not finite.
 * @example bestAssignment([[1, 5], [5, 1]]) // [1, 0]
 */
export function bestAssignment(worth: readonly (readonly number[])[]): number[] {
  const size = worth.length;
  for (const row of worth) {
    if (row.length !== size)
      throw new RangeError(`the table must be square: ${size} rows, a row of ${row.length}`);
    if (!row.every(Number.isFinite)) throw new RangeError('the table must hold finite numbers');
  }
  // Columns and rows count from 1; column 0 is where the row being placed waits.
  const all = <Value>(value: Value): Value[] => Array.from({ length: size + 1 }, () => value);
  const rowOf = all(0);
  const rowPotential = all(0);
  const columnPotential = all(0);
  for (let placing = 1; placing <= size; placing += 1) {
    rowOf[0] = placing;
    const slack = all(Infinity);
    const cameFrom = all(0);
    const seen = all(false);
    let column = 0;
    while (rowOf[column] !== 0) {
      seen[column] = true;
      const row = rowOf[column] ?? 0;
      let least = Infinity;
      let nearest = 0;
      for (let other = 1; other <= size; other += 1) {
        if (seen[other] === true) continue;
        const cost =
          0 - (worth[row - 1]?.[other - 1] ?? 0) - (rowPotential[row] ?? 0) - (columnPotential[other] ?? 0);
        if (cost < (slack[other] ?? Infinity)) {
          slack[other] = cost;
          cameFrom[other] = column;
        }
        if ((slack[other] ?? Infinity) < least) {
          least = slack[other] ?? Infinity;
          nearest = other;
        }
      }
      for (let other = 0; other <= size; other += 1) {
        const held = rowOf[other] ?? 0;
        if (seen[other] === true) {
          rowPotential[held] = (rowPotential[held] ?? 0) + least;
          columnPotential[other] = (columnPotential[other] ?? 0) - least;
        } else slack[other] = (slack[other] ?? Infinity) - least;
      }
      column = nearest;
    }
    while (column !== 0) {
      const before = cameFrom[column] ?? 0;
      rowOf[column] = rowOf[before] ?? 0;
      column = before;
    }
  }
  const columnOf = Array.from({ length: size }, () => 0);
  for (let column = 1; column <= size; column += 1) columnOf[(rowOf[column] ?? 1) - 1] = column - 1;
  return columnOf;
}
