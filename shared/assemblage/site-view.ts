import { derive, type Stream } from '../chance/index.ts';
import { bestGroup } from './best-group.ts';
import type { Counts } from './counts.ts';
import { kindsInCompany } from './kinds-in-company.ts';
import { likenessMatrix, type Likeness } from './likeness.ts';
import { seriate } from './seriate.ts';
import { siteByChance } from './site-by-chance.ts';

/** Whether the whole site shows a pattern, each question with its correction for having looked many times. */
export interface SiteView {
  readonly pairsOfKinds: number;
  /** The kinds that most keep company, with their own chance and the same corrected after Holm. */
  readonly company: readonly {
    readonly kinds: readonly [string, string];
    readonly together: number;
    readonly chance: number;
    readonly holm: number;
  }[];
  /** How often shuffled sites have a closest pair of kinds as close. */
  readonly closest: number;
  /** How often shuffled sites fall as clearly into pits that share much and pits that share little. */
  readonly uneven: number;
  /** The three pits that share most uncommon kinds, and how often the best three of a shuffled site share as many; null with fewer pits. */
  readonly trio: {
    readonly pits: readonly string[];
    readonly kinds: readonly string[];
    readonly groups: number;
    readonly chance: number;
  } | null;
  /** Pits in the order in which neighbours are most alike, with their likeness; null where a pit is empty. */
  readonly seriation: {
    readonly pits: readonly string[];
    readonly matrix: readonly (readonly number[])[];
    readonly breaks: number;
  } | null;
}

/** Shuffled sites looked at. ASM: a chance of 5 % is then known to about one in a hundred. */
const SHUFFLES = 500;
const SHOWN = 3;
/** A kind in more than this share of the pits is common, and its company tells little. ASM. */
const COMMON = 0.6;

function trioOf(counts: Counts, chance: Stream): SiteView['trio'] {
  if (counts.pits.length < 4) return null;
  const most = Math.floor(counts.pits.length * COMMON);
  const best = bestGroup(counts, { size: 3, fewest: 2, most }, SHUFFLES, chance);
  if (best.group === null || best.group.kinds.length === 0) return null;
  return { ...best.group, groups: best.groups, chance: best.chance };
}

function seriationOf(counts: Counts, by: Likeness): SiteView['seriation'] {
  const rows = likenessMatrix(counts, by).map((row) =>
    row.flatMap((value) => (value === null ? [] : [value])),
  );
  if (rows.some((row) => row.length !== rows.length)) return null;
  const { order, breaks } = seriate(rows);
  return {
    pits: order.flatMap((place) => counts.pits[place] ?? []),
    matrix: order.map((row) => order.map((column) => rows[row]?.[column] ?? 0)),
    breaks: breaks.events,
  };
}

/** Looks at a whole site: which kinds keep company, which three pits share most, in what order neighbours are alike. */
export function siteView(counts: Counts, by: Likeness, chance: Stream): SiteView {
  const { pairs, closest } = kindsInCompany(counts, SHUFFLES, derive(chance, 'company'));
  return {
    pairsOfKinds: pairs.length,
    company: pairs.slice(0, SHOWN).map(({ kinds, together, chance: own, holm }) => ({
      kinds,
      together,
      chance: own,
      holm,
    })),
    closest: closest.chance,
    uneven: siteByChance(counts, SHUFFLES, derive(chance, 'site')).chance,
    trio: trioOf(counts, derive(chance, 'trio')),
    seriation: seriationOf(counts, by),
  };
}
