/** Brainerd-Robinson likeness of pits whose counts are dealt again and again; each pit's size stands still. */
export interface DealtLikeness {
  /** Reads the counts as they now are. */
  readonly read: () => void;
  /** 0 to 200; the same as `brainerdRobinson` of the two rows. */
  readonly likeness: (first: number, second: number) => number;
}

/** Keeps the percentages of counts that lie pit after pit, so that each is worked out once a deal and not once a pair. */
export function dealtLikeness(rows: readonly (readonly number[])[], counts: Uint32Array): DealtLikeness {
  const kinds = rows[0]?.length ?? 0;
  const perFind = rows.map(
    (row) =>
      100 /
      Math.max(
        1,
        row.reduce((total, count) => total + count, 0),
      ),
  );
  const percent = new Float64Array(counts.length);
  return {
    read: () => {
      for (const [pit, share] of perFind.entries()) {
        for (let cell = pit * kinds; cell < (pit + 1) * kinds; cell += 1)
          percent[cell] = (counts[cell] ?? 0) * share;
      }
    },
    likeness: (first, second) => {
      let apart = 0;
      for (let kind = 0; kind < kinds; kind += 1) {
        apart += Math.abs((percent[first * kinds + kind] ?? 0) - (percent[second * kinds + kind] ?? 0));
      }
      return 200 - apart;
    },
  };
}
