/**
 * In how many pits each kind lies together with each other kind; 0 on the diagonal.
 *
 * @example cooccurrence([[1, 1], [1, 0]]) // [[0, 1], [1, 0]]
 */
export function cooccurrence(rows: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const kinds = [...(rows[0] ?? []).keys()];
  return kinds.map((one) =>
    kinds.map((other) =>
      one === other ? 0 : rows.filter((row) => (row[one] ?? 0) > 0 && (row[other] ?? 0) > 0).length,
    ),
  );
}
