import type { Stream } from '../chance/index.ts';
import { countBits, packRows, type PackedRows } from './bits.ts';
import { uncommonKinds, type Counts } from './counts.ts';
import { keepTally, type ChanceTally } from './tally.ts';
import { walkTables } from './walk-tables.ts';

/** A group of pits, and the uncommon kinds that all of them hold. */
export interface SharingGroup {
  readonly pits: readonly string[];
  readonly kinds: readonly string[];
}

/** Which groups to look at, and which kinds count as uncommon: in at least `fewest` and at most `most` pits. */
export interface GroupQuestion {
  /** Pits in a group: 3 for a trio. */
  readonly size: number;
  readonly fewest: number;
  readonly most: number;
}

/** Every way to take `size` of the numbers from `first` up to `end` - 1. */
function groupsOf(size: number, end: number, first = 0): (readonly number[])[] {
  if (size === 0) return [[]];
  return Array.from({ length: Math.max(0, end - first) }, (_, step) => first + step).flatMap((one) =>
    groupsOf(size - 1, end, one + 1).map((rest) => [one, ...rest]),
  );
}

/** All groups of pits by the uncommon kinds they share, most first; groups that share as many keep the order of the pits. */
export function sharingGroups(
  counts: Counts,
  { size, fewest, most }: GroupQuestion,
): readonly SharingGroup[] {
  const uncommon = new Set(uncommonKinds(counts, fewest, most));
  const holds = (pit: number, kind: number): boolean => (counts.rows[pit]?.[kind] ?? 0) > 0;
  return groupsOf(size, counts.pits.length)
    .map((group) => ({
      pits: group.flatMap((pit) => counts.pits[pit] ?? []),
      kinds: counts.kinds.filter(
        (name, kind) => uncommon.has(name) && group.every((pit) => holds(pit, kind)),
      ),
    }))
    .toSorted((a, b) => b.kinds.length - a.kinds.length);
}

/** The best group of a site and how often the best that chance can offer is as good. */
export interface BestGroup extends ChanceTally {
  readonly group: SharingGroup | null;
  /** How many shuffles had a best group sharing just so many kinds: `pile[n]` of them share n. */
  readonly pile: readonly number[];
  /** Groups that were looked at, which is why a single group's own chance would flatter it. */
  readonly groups: number;
}

/**
 * The group of pits that shares most uncommon kinds, held against the *best* group of each shuffled site.
 *
 * Noticing the best of many groups and then testing it alone finds a pattern in every site; comparing best with best does not
 * (the single-step correction of Westfall & Young 1993, Resampling-Based Multiple Testing). Both margins are kept.
 */
export function bestGroup(
  counts: Counts,
  question: GroupQuestion,
  shuffles: number,
  chance: Stream,
): BestGroup {
  const [best = null] = sharingGroups(counts, question);
  const groups = groupsOf(question.size, counts.pits.length);
  const uncommon = new Set(uncommonKinds(counts, question.fewest, question.most));
  const { bits: mask } = packRows([counts.kinds.map((kind) => (uncommon.has(kind) ? 1 : 0))]);
  const count = countBits; // called a million times: kept at hand
  const most = ({ words, bits }: PackedRows): number => {
    let greatest = 0;
    for (const group of groups) {
      let shared = 0;
      for (let word = 0; word < words; word += 1) {
        let common = mask[word] ?? 0;
        for (const pit of group) common &= bits[pit * words + word] ?? 0;
        shared += count(common);
      }
      if (shared > greatest) greatest = shared;
    }
    return greatest;
  };
  const tally = keepTally(best?.kinds.length ?? 0);
  const pile: number[] = [];
  walkTables(counts.rows, shuffles, chance, (packed) => {
    const value = most(packed);
    while (pile.length <= value) pile.push(0);
    pile[value] = (pile[value] ?? 0) + 1;
    tally.add(value);
  });
  return { group: best, pile, groups: groups.length, ...tally.sum() };
}
