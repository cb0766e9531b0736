import type { Stream } from '../chance/index.ts';
import { emptyRows, heldBits, packInto, sharedBits, type PackedRows } from './bits.ts';
import type { Counts } from './counts.ts';
import { dealFinds } from './deal-finds.ts';
import { dealKinds } from './deal-kinds.ts';
import { dealtLikeness } from './dealt-likeness.ts';
import { likenessOf, type Likeness } from './likeness.ts';
import { eachTableWithMargins } from './tables-with-margins.ts';
import { keepTally, type ChanceTally } from './tally.ts';
import { walkTables } from './walk-tables.ts';

/**
 * What a shuffle keeps. `finds`: all finds in one heap, each pit gets as many as it had. `kinds`: each kind in as many pits
 * as before. `both`: each kind in as many pits, each pit with as many kinds, as before.
 */
const KEEPS = ['finds', 'kinds', 'both'] as const;

export type Keeps = (typeof KEEPS)[number];

/** What is kept unless something else is asked: counts are dealt as finds, presence keeps both margins. */
export const usualKeeps = (by: Likeness): Keeps => (by === 'brainerd-robinson' ? 'finds' : 'both');

/** Two pits, how alike they are and how often chance makes them as alike. */
export interface PairByChance extends ChanceTally {
  readonly first: string;
  readonly second: string;
}

/** What to compare, and how much to shuffle. */
export interface AlikeQuestion {
  readonly by: Likeness;
  readonly keeps?: Keeps;
  readonly shuffles: number;
  readonly chance: Stream;
  /** Look at every possible table instead, where there are at most this many (both margins kept only); 0 never does. */
  readonly exactUpTo?: number;
  /** Pairs to look at, by the places of their pits; all pairs unless given. */
  readonly pairs?: readonly (readonly [number, number])[];
  /** Told each pair's likeness at each shuffle, for the growing pile: the place of the pair in the list, its likeness. */
  readonly watch?: (pair: number, likeness: number) => void;
}

const allPairs = (pits: number): (readonly [number, number])[] =>
  Array.from({ length: pits }, (_, first) => first).flatMap((first) =>
    Array.from({ length: pits - first - 1 }, (_, more): readonly [number, number] => [
      first,
      first + 1 + more,
    ]),
  );

/** Likeness from shared kinds and the two pits' numbers of kinds. */
const ofShared = (by: Likeness, shared: number, sum: number): number =>
  // A deal that leaves both pits without kinds makes them alike in nothing.
  sum === 0 ? 0 : by === 'jaccard' ? shared / (sum - shared) : (2 * shared) / sum;

/**
 * For each pair of pits, how often chance alone makes two pits as alike; pairs without a likeness are left out.
 *
 * Deterministic for a seed. Source of the models: Gotelli 2000, Ecology 81: 2606-2621 (fixed margins); the deal of finds is
 * the plain permutation test (Fisher 1935).
 * @throws RangeError when Brainerd-Robinson is asked with presence shuffled: presence has no proportions to compare.
 */
export function alikeByChance(counts: Counts, question: AlikeQuestion): readonly PairByChance[] {
  const { by, shuffles, chance, exactUpTo = 0, watch } = question;
  const keeps = question.keeps ?? usualKeeps(by);
  if (by === 'brainerd-robinson' && keeps !== 'finds')
    throw new RangeError(`${by} needs finds dealt, not ${keeps} kept`);
  const rows = counts.rows;
  const held = rows.map((row) => row.filter((count) => count > 0).length);
  const tallies = (question.pairs ?? allPairs(rows.length)).flatMap(([first, second]) => {
    const observed = likenessOf(by, rows[first] ?? [], rows[second] ?? []).value;
    return observed === null ? [] : [{ first, second, tally: keepTally(observed) }];
  });

  const add = (pair: number, likeness: number): void => {
    tallies[pair]?.tally.add(likeness);
    watch?.(pair, likeness);
  };
  const addShared = (packed: PackedRows, sumOf: (first: number, second: number) => number): void => {
    for (const [pair, { first, second }] of tallies.entries()) {
      add(pair, ofShared(by, sharedBits(packed, first, second), sumOf(first, second)));
    }
  };
  const sum = (isExact: boolean): readonly PairByChance[] =>
    tallies.map(({ first, second, tally }) => ({
      first: counts.pits[first] ?? '',
      second: counts.pits[second] ?? '',
      ...tally.sum(isExact),
    }));

  switch (keeps) {
    case 'both': {
      const heldOf = (first: number, second: number): number => (held[first] ?? 0) + (held[second] ?? 0);
      const addPacked = (packed: PackedRows): void => addShared(packed, heldOf);
      if (exactUpTo > 0 && eachTableWithMargins(rows, exactUpTo, () => {}) !== null) {
        eachTableWithMargins(rows, exactUpTo, addPacked);
        return sum(true);
      }
      walkTables(rows, shuffles, chance, addPacked);
      return sum(false);
    }
    case 'kinds': {
      const dealer = dealKinds(rows, chance);
      const { packed } = dealer;
      const heldOf = (first: number, second: number): number =>
        heldBits(packed, first) + heldBits(packed, second);
      for (let turn = 0; turn < shuffles; turn += 1) {
        dealer.next();
        addShared(packed, heldOf);
      }
      return sum(false);
    }
    case 'finds': {
      const kinds = counts.kinds.length;
      const dealer = dealFinds(rows, chance);
      const packed = emptyRows(rows.length, kinds);
      const heldOf = (first: number, second: number): number =>
        heldBits(packed, first) + heldBits(packed, second);
      const dealt = dealtLikeness(rows, dealer.counts);
      for (let turn = 0; turn < shuffles; turn += 1) {
        dealer.next();
        if (by === 'brainerd-robinson') {
          dealt.read();
          for (const [pair, { first, second }] of tallies.entries()) add(pair, dealt.likeness(first, second));
        } else {
          packInto(packed, dealer.counts, kinds);
          addShared(packed, heldOf);
        }
      }
      return sum(false);
    }
    default:
      return keeps satisfies never;
  }
}
