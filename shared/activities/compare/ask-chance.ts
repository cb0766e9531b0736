import {
  alikeByChance,
  judge,
  siteView,
  usualKeeps,
  type Counts,
  type Likeness,
  type PairByChance,
} from '../../assemblage/index.ts';
import { derive, shuffle, type Stream } from '../../chance/index.ts';
import type { AskedChance } from './activity.ts';

const SHUFFLES = 1000;
/** Up to this many tables all are looked at, and chance is exact; counting more than that only to give up takes long. ASM. */
const EVERY_TABLE = 2_000;
/** Pairs asked about: enough that guessing evens out, few enough for a sitting. ASM. */
const MOST_PAIRS = 6;
/** Chances between these are too near once in twenty to ask about: another seed might judge otherwise. ASM. */
const CLEARLY_HARDLY = 0.03;
const CLEARLY_COULD = 0.1;

/** As many as wanted, spread over the whole list. */
const spreadOver = <Item>(items: readonly Item[], wanted: number): readonly Item[] =>
  items.length <= wanted
    ? items
    : items.filter((_, index) =>
        Array.from({ length: wanted }, (__, step) =>
          Math.round((step * (items.length - 1)) / Math.max(1, wanted - 1)),
        ).includes(index),
      );

/** Pairs of differing likeness, with both judgements among them. */
function choosePairs(all: readonly PairByChance[]): readonly PairByChance[] {
  const byLikeness = all.toSorted((a, b) => b.observed - a.observed);
  const hardly = byLikeness.filter(({ chance }) => chance <= CLEARLY_HARDLY).slice(0, MOST_PAIRS / 2);
  const could = byLikeness.filter(({ chance }) => chance >= CLEARLY_COULD);
  return [...hardly, ...spreadOver(could, MOST_PAIRS - hardly.length)];
}

/** What is asked of chance; null where all clear pairs have the same answer, so that nothing could be told from guessing. */
export function askChance(counts: Counts, by: Likeness, chance: Stream): AskedChance | null {
  const keeps = usualKeeps(by);
  const all = alikeByChance(counts, {
    by,
    keeps,
    shuffles: SHUFFLES,
    chance: derive(chance, 'pairs'),
    exactUpTo: keeps === 'both' ? EVERY_TABLE : 0,
  });
  const chosen = choosePairs(all);
  if (new Set(chosen.map(judge)).size < 2 || new Set(chosen.map(({ observed }) => observed)).size < 2)
    return null;
  const pairs = shuffle(derive(chance, 'deal'), chosen).map(({ first, second, ...tally }) => ({
    id: `${first}-${second}`,
    first: counts.pits.indexOf(first),
    second: counts.pits.indexOf(second),
    likeness: tally.observed,
    tally,
    record: judge(tally),
  }));
  return {
    by,
    most: by === 'brainerd-robinson' ? 200 : 1,
    keeps,
    pairs,
    site: siteView(counts, by, derive(chance, 'site')),
  };
}
