/** What some pits hold: a row a pit, a column a kind of find, whole numbers from 0. */
export interface Counts {
  readonly pits: readonly string[];
  readonly kinds: readonly string[];
  /** `rows[pit][kind]`. */
  readonly rows: readonly (readonly number[])[];
}

/** One find, or several alike, from one pit. */
export interface CountedFind {
  readonly pit: string;
  readonly kind: string;
  /** How many pieces; 1 where nothing is said. */
  readonly count?: number;
}

/**
 * Counts finds by pit and kind. Pits and kinds come in the order first met, unless given; a given pit may stay empty.
 *
 * @throws RangeError on a find whose pit or kind is not among those given.
 * @example countFinds([{ pit: 'P3', kind: 'pig jaw' }]).rows // [[1]]
 */
export function countFinds(
  finds: readonly CountedFind[],
  pits: readonly string[] = [...new Set(finds.map((find) => find.pit))],
  kinds: readonly string[] = [...new Set(finds.map((find) => find.kind))],
): Counts {
  const rows = pits.map(() => kinds.map(() => 0));
  for (const { pit, kind, count = 1 } of finds) {
    const row = rows[pits.indexOf(pit)];
    const column = kinds.indexOf(kind);
    if (row === undefined || column < 0)
      throw new RangeError(`${kind} from ${pit} has no place in the table`);
    row[column] = (row[column] ?? 0) + count;
  }
  return { pits, kinds, rows };
}

/** The same table with 1 where a kind is present and 0 where it is not. @example presence(counts).rows // [[1, 0, 1]] */
export const presence = (counts: Counts): Counts => ({
  ...counts,
  rows: counts.rows.map((row) => row.map((count) => (count > 0 ? 1 : 0))),
});

/** In how many pits each kind lies, in the order of the kinds. */
export const pitsWithKind = (counts: Counts): readonly number[] =>
  counts.kinds.map((_, kind) => counts.rows.filter((row) => (row[kind] ?? 0) > 0).length);

/** The kinds that lie in at least `fewest` and at most `most` pits: those whose company can tell anything. */
export function uncommonKinds(counts: Counts, fewest: number, most: number): readonly string[] {
  const spread = pitsWithKind(counts);
  return counts.kinds.filter((_, kind) => (spread[kind] ?? 0) >= fewest && (spread[kind] ?? 0) <= most);
}
