/** Works named by some figures, numbered from 1 in the order they are first named. */
export interface NumberedSources {
  readonly works: readonly string[];
  /** "1, 3": the numbers of a figure's own. */
  readonly numbersOf: (sources: readonly string[]) => string;
}

/** Numbers the works once, so that a table points to them and does not repeat them. */
export function numberSources(
  named: readonly { readonly sources: readonly string[] }[],
  citations: Readonly<Record<string, string>>,
): NumberedSources {
  const ids = [...new Set(named.flatMap(({ sources }) => sources))];
  return {
    works: ids.map((id) => citations[id] ?? id),
    numbersOf: (sources) => sources.map((id) => ids.indexOf(id) + 1).join(', '),
  };
}
