import type { Stream } from '../chance/index.ts';
import { countBits, type PackedRows } from './bits.ts';
import { benjaminiHochberg, holm } from './correct-many.ts';
import { cooccurrence } from './cooccurrence.ts';
import { pitsWithKind, type Counts } from './counts.ts';
import { companyTail } from './hypergeometric.ts';
import { keepTally, type ChanceTally } from './tally.ts';
import { walkTables } from './walk-tables.ts';

/** Two kinds of find, and how often they lie together. */
export interface Company {
  readonly kinds: readonly [string, string];
  /** Pits that hold both. */
  readonly together: number;
  /** Pits that would hold both on average, were each kind dealt to pits at random. */
  readonly expected: number;
  /** The exact chance (0 to 1) of as many or more together, for this pair looked at alone. */
  readonly chance: number;
  /** The same corrected for all pairs looked at, after Holm 1979. */
  readonly holm: number;
  /** The same corrected after Benjamini & Hochberg 1995. */
  readonly benjaminiHochberg: number;
}

/** The pairs of kinds of a site, and whether the closest of them is closer than chance would offer. */
export interface SiteCompany {
  /** Least chance first; pairs as likely keep the order of the kinds. */
  readonly pairs: readonly Company[];
  /**
   * How often a shuffled site (both margins kept) has a closest pair at least as close; the value is -log10 of that
   * pair's chance. This is the question for a whole site: with few pits no single pair can pass a correction for hundreds.
   */
  readonly closest: ChanceTally;
}

/** Which kinds keep company; kinds that lie in every pit or in none can keep none and are left out. */
export function kindsInCompany(counts: Counts, shuffles: number, chance: Stream): SiteCompany {
  const pits = counts.rows.length;
  const spread = pitsWithKind(counts);
  const telling = [...counts.kinds.keys()].filter(
    (kind) => (spread[kind] ?? 0) > 0 && (spread[kind] ?? 0) < pits,
  );
  const together = cooccurrence(counts.rows);
  const pairs = telling.flatMap((one) =>
    telling
      .filter((other) => other > one)
      .map((other) => {
        const [first, second] = [spread[one] ?? 0, spread[other] ?? 0];
        // Margins stand still in a shuffle, so each pair's chances are worked out once, by the pits that hold both.
        const chances = Array.from({ length: pits + 1 }, (_, both) => companyTail(pits, first, second, both));
        return { one, other, both: together[one]?.[other] ?? 0, expected: (first * second) / pits, chances };
      }),
  );
  const own = pairs.map(({ both, chances }) => chances[both] ?? 1);
  const [byHolm, byHochberg] = [holm(own), benjaminiHochberg(own)];

  const closeness = pairs.map(({ chances }) => chances.map((value) => -Math.log10(value)));
  const closest = keepTally(Math.max(0, ...pairs.map(({ both }, pair) => closeness[pair]?.[both] ?? 0)));
  const columnWords = Math.max(1, Math.ceil(pits / 32));
  const columns = new Int32Array(counts.kinds.length * columnWords);
  walkTables(counts.rows, shuffles, chance, (packed) => {
    turnTable(packed, pits, columns, columnWords);
    let greatest = 0;
    for (const [pair, { one, other }] of pairs.entries()) {
      let both = 0;
      for (let word = 0; word < columnWords; word += 1) {
        both += countBits(
          (columns[one * columnWords + word] ?? 0) & (columns[other * columnWords + word] ?? 0),
        );
      }
      greatest = Math.max(greatest, closeness[pair]?.[both] ?? 0);
    }
    closest.add(greatest);
  });

  const companies = pairs.map(({ one, other, both, expected }, pair): Company => ({
    kinds: [counts.kinds[one] ?? '', counts.kinds[other] ?? ''],
    together: both,
    expected,
    chance: own[pair] ?? 1,
    holm: byHolm[pair] ?? 1,
    benjaminiHochberg: byHochberg[pair] ?? 1,
  }));
  return { pairs: companies.toSorted((a, b) => a.chance - b.chance), closest: closest.sum() };
}

/** Rows of kinds turned into columns of pits. */
function turnTable(
  { words, bits }: PackedRows,
  pits: number,
  columns: Int32Array,
  columnWords: number,
): void {
  columns.fill(0);
  for (let pit = 0; pit < pits; pit += 1) {
    for (let word = 0; word < words; word += 1) {
      let left = bits[pit * words + word] ?? 0;
      while (left !== 0) {
        const lowest = left & -left;
        const kind = word * 32 + (31 - Math.clz32(lowest));
        const place = kind * columnWords + (pit >>> 5);
        columns[place] = (columns[place] ?? 0) | (1 << (pit & 31));
        left ^= lowest;
      }
    }
  }
}
