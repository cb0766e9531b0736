import { nearest } from '../../lesson/nearest.ts';
import type { Fault, Path } from '../../lesson/problem.ts';
import type { Find, Pit, Site } from '../../library/library.ts';
import { sortProblems } from '../../words/en/sort-problems.ts';
import type { SortBlock } from './schema.ts';

/** A find the block names, with the place in the block that names it. */
export interface NamedFind {
  readonly find: Find;
  readonly path: Path;
}

export interface NamedFinds {
  readonly named: readonly NamedFind[];
  /** The pit, where every find comes from one. */
  readonly pit: Pit | null;
  readonly faults: readonly Fault[];
}

/** Looks up the finds a sort names, in a pit or one by one. */
export function readFinds(block: SortBlock, site: Site): NamedFinds {
  const faults: Fault[] = [];
  const unknown = (written: string, path: Path, known: readonly string[], where: string): void => {
    const near = nearest(written, known);
    const replacement = near === null ? {} : { replacement: near };
    faults.push({
      code: 'find-unknown',
      grade: 'error',
      path,
      ...sortProblems.findUnknown(written, near, known, where),
      ...replacement,
    });
  };
  const { finds } = block;
  if (Array.isArray(finds)) {
    const everyFind = site.pits.flatMap((pit) => pit.finds);
    const named = finds.flatMap((id, index): NamedFind[] => {
      const find = everyFind.find((candidate) => candidate.id === id);
      const path = ['finds', index];
      if (find === undefined)
        unknown(
          id,
          path,
          everyFind.map((known) => known.id),
          `the finds of ${site.name}`,
        );
      else if (finds.indexOf(id) < index) {
        faults.push({ code: 'find-repeated', grade: 'error', path, ...sortProblems.findRepeated(id) });
      } else return [{ find, path }];
      return [];
    });
    const pitIds = new Set(named.map(({ find }) => find.pit));
    const pit = pitIds.size === 1 ? (site.pits.find(({ id }) => pitIds.has(id)) ?? null) : null;
    return { named, pit, faults };
  }
  const wanted = finds.pit;
  const leaveOut = finds['leave-out'] ?? [];
  const pit = site.pits.find(({ id }) => id === wanted);
  if (pit === undefined) {
    const pits = site.pits.map(({ id }) => id);
    const near = nearest(wanted, pits);
    const replacement = near === null ? {} : { replacement: near };
    const words = sortProblems.pitUnknown(wanted, near, pits);
    return {
      named: [],
      pit: null,
      faults: [{ code: 'find-unknown', grade: 'error', path: ['finds', 'pit'], ...words, ...replacement }],
    };
  }
  for (const [index, id] of leaveOut.entries()) {
    if (!pit.finds.some((find) => find.id === id)) {
      unknown(
        id,
        ['finds', 'leave-out', index],
        pit.finds.map((find) => find.id),
        `the finds of pit ${pit.id}`,
      );
    }
  }
  const named = pit.finds
    .filter(({ id }) => !leaveOut.includes(id))
    .map((find): NamedFind => ({ find, path: ['finds', 'pit'] }));
  return { named, pit, faults };
}
