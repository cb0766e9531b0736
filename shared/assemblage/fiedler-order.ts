/** Rotations stop when what is left off the diagonal is this small a share of the whole. */
const SMALL = 1e-24;
const MOST_SWEEPS = 60;

/** Eigenvalues and eigenvectors (columns) of a symmetric matrix. Source: Jacobi 1846; Golub & Van Loan, Matrix Computations, section 8.5. */
function eigen(symmetric: readonly (readonly number[])[]): { values: number[]; vectors: number[][] } {
  const size = symmetric.length;
  const a = symmetric.map((row) => [...row]);
  const vectors = a.map((_, row) => a.map((_other, column) => (row === column ? 1 : 0)));
  const at = (matrix: number[][], row: number, column: number): number => matrix[row]?.[column] ?? 0;
  const rotate = (
    matrix: number[][],
    r1: number,
    c1: number,
    r2: number,
    c2: number,
    s: number,
    tau: number,
  ): void => {
    const [one, other] = [at(matrix, r1, c1), at(matrix, r2, c2)];
    (matrix[r1] ?? [])[c1] = one - s * (other + one * tau);
    (matrix[r2] ?? [])[c2] = other + s * (one - other * tau);
  };
  const whole = a.flat().reduce((total, value) => total + value * value, 0);
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep += 1) {
    let off = 0;
    for (let p = 0; p < size; p += 1) for (let q = p + 1; q < size; q += 1) off += at(a, p, q) ** 2;
    if (off <= SMALL * whole) break;
    for (let p = 0; p < size; p += 1) {
      for (let q = p + 1; q < size; q += 1) {
        const pq = at(a, p, q);
        if (pq === 0) continue;
        const theta = (at(a, q, q) - at(a, p, p)) / (2 * pq);
        const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        const c = 1 / Math.sqrt(t * t + 1);
        const [s, tau] = [t * c, (t * c) / (1 + c)];
        (a[p] ?? [])[p] = at(a, p, p) - t * pq;
        (a[q] ?? [])[q] = at(a, q, q) + t * pq;
        (a[p] ?? [])[q] = 0;
        for (let i = 0; i < p; i += 1) rotate(a, i, p, i, q, s, tau);
        for (let i = p + 1; i < q; i += 1) rotate(a, p, i, i, q, s, tau);
        for (let i = q + 1; i < size; i += 1) rotate(a, p, i, q, i, s, tau);
        for (let i = 0; i < size; i += 1) rotate(vectors, i, p, i, q, s, tau);
      }
    }
  }
  return { values: a.map((row, place) => row[place] ?? 0), vectors };
}

/**
 * The pits ordered by the Fiedler vector of their likeness: where an order in Robinson form exists and pits hang together,
 * this is it.
 *
 * Source: Atkins, Boman & Hendrickson 1998, SIAM Journal on Computing 28: 297-310.
 */
export function fiedlerOrder(similarity: readonly (readonly number[])[]): readonly number[] {
  const laplacian = similarity.map((row, pit) => {
    const degree = row.reduce((total, value, other) => total + (other === pit ? 0 : value), 0);
    return row.map((value, other) => (other === pit ? degree : -value));
  });
  const { values, vectors } = eigen(laplacian);
  const [, second = 0] = [...values.keys()].toSorted((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  return [...similarity.keys()].toSorted((a, b) => (vectors[a]?.[second] ?? 0) - (vectors[b]?.[second] ?? 0));
}
