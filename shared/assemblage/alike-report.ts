import { derive, stream } from '../chance/index.ts';
import { alikeByChance, usualKeeps, type Keeps } from './alike-by-chance.ts';
import type { Counts } from './counts.ts';
import { likenessMatrix, type Likeness } from './likeness.ts';
import { siteByChance } from './site-by-chance.ts';
import type { ChanceTally } from './tally.ts';

/** Shuffles where nothing else is asked. ASM: a chance of 5 % is then known to about one in a hundred. */
const USUAL_SHUFFLES = 2000;

/** Up to this many tables all are looked at instead of some. ASM. */
const EVERY_TABLE = 20_000;

/** How often chance alone does as much. */
export interface ChanceReport {
  readonly keeps: Keeps;
  /** True where every table with these margins was looked at; no seed then matters. */
  readonly isExact: boolean;
  /** Tables looked at. */
  readonly tables: number;
  readonly seed: string;
  /** By pit and pit, the chance (0 to 1) of being as alike or more; null on the diagonal and where there is no likeness. */
  readonly matrix: readonly (readonly (number | null)[])[];
  /** For presence: whether the whole site falls into pits that share more and less than chance makes them (S²); else null. */
  readonly site: ChanceTally | null;
}

/** How alike the pits of a table are, as plain JSON. */
export interface AlikeReport {
  readonly by: Likeness;
  readonly kinds: readonly string[];
  readonly pits: readonly string[];
  readonly matrix: readonly (readonly (number | null)[])[];
  /** Null where no shuffles were asked for. */
  readonly chance: ChanceReport | null;
}

/**
 * Reports how alike pits are and what chance alone would do.
 *
 * @param shuffles How many; null for the usual, or for every table where there are few.
 */
export function alikeReport(
  counts: Counts,
  by: Likeness,
  shuffles: number | null,
  seed: string,
): AlikeReport {
  const report = { by, kinds: counts.kinds, pits: counts.pits, matrix: likenessMatrix(counts, by) };
  if (shuffles === 0) return { ...report, chance: null };
  const keeps = usualKeeps(by);
  const wanted = shuffles ?? USUAL_SHUFFLES;
  const parent = stream(seed);
  const pairs = alikeByChance(counts, {
    by,
    keeps,
    shuffles: wanted,
    chance: derive(parent, 'pairs'),
    exactUpTo: shuffles === null ? EVERY_TABLE : 0,
  });
  const chances = new Map(
    pairs.map(({ first, second, chance }) => [JSON.stringify([first, second]), chance]),
  );
  const of = (first: string, second: string): number | null =>
    chances.get(JSON.stringify([first, second])) ?? chances.get(JSON.stringify([second, first])) ?? null;
  return {
    ...report,
    chance: {
      keeps,
      isExact: pairs[0]?.isExact ?? false,
      tables: pairs[0]?.draws ?? 0,
      seed,
      matrix: counts.pits.map((first) => counts.pits.map((second) => of(first, second))),
      site: keeps === 'both' ? siteByChance(counts, wanted, derive(parent, 'site')) : null,
    },
  };
}
