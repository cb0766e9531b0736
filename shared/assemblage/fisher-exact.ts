import { hypergeometric } from './hypergeometric.ts';
import type { Overlap } from './overlap.ts';

/** Chances (0 to 1) of a table at least as uneven, with all margins kept. */
export interface FisherExact {
  /** As many or more in the first cell. */
  readonly greater: number;
  /** As many or fewer in the first cell. */
  readonly less: number;
  /** All tables no more likely than this one. */
  readonly twoSided: number;
  /** `greater` with this very table counted half: less cautious, closer to its name on average. Source: Lancaster 1961, JASA 56: 223-234. */
  readonly greaterMid: number;
}

/** Two tables are as likely when they differ by less than this share. Source: R stats::fisher.test, relErr 1 + 1e-7. */
const SLACK = 1e-7;

/**
 * Fisher's exact test of a table of two by two counts.
 *
 * Source: Fisher 1935, The Design of Experiments, chapter 2.
 * @throws RangeError unless the counts are whole numbers from 0.
 * @example fisherExact([[4, 0], [0, 4]]).greater // 1 / 70
 */
export function fisherExact(
  table: readonly [readonly [number, number], readonly [number, number]],
): FisherExact {
  const [[a, b], [c, d]] = table;
  if ([a, b, c, d].some((count) => count < 0))
    throw new RangeError(`a table holds no ${[a, b, c, d].join(', ')}`);
  const { least, chances } = hypergeometric(a + b + c + d, a + b, a + c);
  const here = chances[a - least] ?? 0;
  const sum = (parts: readonly number[]): number =>
    Math.min(
      1,
      parts.reduce((total, part) => total + part, 0),
    );
  const greater = sum(chances.slice(a - least));
  return {
    greater,
    less: sum(chances.slice(0, a - least + 1)),
    twoSided: sum(chances.filter((chance) => chance <= here * (1 + SLACK))),
    greaterMid: greater - here / 2,
  };
}

/**
 * The chance that two pits, each filled with as many kinds as it has from all the kinds of the site, share as many or more.
 *
 * Takes every kind as equally likely, which it is not: common kinds alone make pits alike.
 * @throws RangeError when the two pits hold more kinds than `allKinds`.
 */
export const fisherOfPits = ({ both, onlyFirst, onlySecond }: Overlap, allKinds: number): FisherExact =>
  fisherExact([
    [both, onlyFirst],
    [onlySecond, allKinds - both - onlyFirst - onlySecond],
  ]);
