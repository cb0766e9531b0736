import type { MakingFigures } from './figures.ts';
import { type Part, reckonProduct, type Reckoning, timesOver } from './reckoning.ts';
import type { Head } from './resolve.ts';
import { massGrams, massUsed } from './size.ts';

const ZERO: Part = { middle: 0, sigma: 0, used: [] };

/** Minutes from nodule to a blank ready to grind, when nothing breaks; exactly 0 for stones that are pecked or sawn. */
export function knapping(figures: MakingFigures, head: Head): Part {
  if (head.stone.shapedBy !== 'flaking') return ZERO;
  const base = figures.coefficients['knap-base'];
  const power = figures.coefficients['knap-exponent'];
  const reference = figures.coefficients['knap-reference-mass'];
  const sigma = figures.spreads['spread-knap'];
  return {
    middle:
      base.middle *
      (massGrams(head) / reference.middle) ** power.middle *
      head.form.knapFactor.middle *
      head.skill.knapMultiplier.middle,
    sigma: sigma.middle,
    used: [
      base,
      power,
      reference,
      head.form.knapFactor,
      head.skill.knapMultiplier,
      sigma,
      ...massUsed(figures, head),
    ],
  };
}

/** The same with the work on blanks that broke: t (1 + h (1 − s) / s), where s of the blanks succeed and h is done when one breaks. */
export function knappingWithFailures(figures: MakingFigures, head: Head): Part {
  const once = knapping(figures, head);
  if (once.middle === 0) return once;
  const failurePoint = figures.coefficients['failure-point'];
  const success = head.skill.blankSuccess;
  const factor = 1 + (failurePoint.middle * (1 - success.middle)) / success.middle;
  return { ...timesOver(once, factor), used: [...once.used, failurePoint, success] };
}

/** Hours to peck a blank to shape; exactly 0 for stones that are flaked or sawn. */
export function pecking(figures: MakingFigures, head: Head): Part {
  if (head.stone.shapedBy !== 'pecking') return ZERO;
  const base = figures.coefficients['peck-base'];
  const power = figures.coefficients['peck-exponent'];
  const reference = figures.coefficients['peck-reference-mass'];
  const sigma = figures.spreads['spread-peck'];
  return {
    middle: base.middle * (massGrams(head) / reference.middle) ** power.middle,
    sigma: sigma.middle,
    used: [base, power, reference, sigma, ...massUsed(figures, head)],
  };
}

/** Hours of shaping before grinding, whichever way the stone is shaped. Sawing has no figures: it is left out and said so. */
export const shapingHours = (figures: MakingFigures, head: Head): Part =>
  head.stone.shapedBy === 'pecking'
    ? pecking(figures, head)
    : timesOver(knappingWithFailures(figures, head), 1 / 60);

/** What a total leaves out for this stone. */
export const notShaped = ({ stone }: Head): readonly string[] =>
  stone.shapedBy === 'sawing' ? ['sawing'] : [];

/**
 * Share of blanks that break, by skill. Its ends are the odds halved and doubled (judgement).
 *
 * Null for stones that are pecked or sawn: nobody we know of has counted how often those break.
 */
export function reckonBreakage(figures: MakingFigures, head: Head): Reckoning | null {
  if (head.stone.shapedBy !== 'flaking') return null;
  const success = head.skill.blankSuccess;
  const odds = figures.coefficients['breakage-odds-factor'];
  const broken = 1 - success.middle;
  const shareAt = (factor: number): number => (broken * factor) / (1 - broken + broken * factor);
  const ends = { low: shareAt(1 / odds.middle), middle: broken, high: shareAt(odds.middle) };
  return reckonProduct(broken, [ends], 'share', [success, odds]);
}
