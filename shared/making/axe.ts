import { grinding, grindingWork } from './grinding.ts';
import type { MakingFigures } from './figures.ts';
import { type Part, reckonPart, type Reckoning, reckonSum, timesOver } from './reckoning.ts';
import type { Head } from './resolve.ts';
import {
  knapping,
  knappingWithFailures,
  notShaped,
  pecking,
  reckonBreakage,
  shapingHours,
} from './shaping.ts';
import { reckonMass } from './size.ts';
import { mining, plainPart } from './supplying.ts';

/** The whole making of one axe, from nodule to bound haft. Hours are those of one adult, not days. */
export interface AxeMaking {
  readonly massGrams: Reckoning;
  /** Minutes for one blank that does not break. */
  readonly knappingMinutes: Reckoning;
  readonly knappingMinutesWithFailures: Reckoning;
  /** Share of blanks that break, 0 to 1; null for stones that are not flaked, of which it is not known. */
  readonly breakageRisk: Reckoning | null;
  readonly peckingHours: Reckoning;
  /** By the clock; with more people at the grinder the work is that many times as long. */
  readonly grindingHours: Reckoning;
  readonly haftingHours: Reckoning;
  readonly totalHours: Reckoning;
}

/** The parts of the whole in hours of work, the widest first. */
const axeParts = (figures: MakingFigures, head: Head): readonly Part[] => [
  plainPart(figures, 'haft-hours', 'spread-haft'),
  grindingWork(figures, head),
  shapingHours(figures, head),
  plainPart(figures, 'find-hours', 'spread-find'),
  mining(figures, head),
  timesOver(plainPart(figures, 'test-minutes', 'spread-test'), 1 / 60),
];

/** The head alone: shaping and grinding, broken blanks included. */
export const reckonHead = (figures: MakingFigures, head: Head): Reckoning =>
  reckonSum([grindingWork(figures, head), shapingHours(figures, head)], 'h', notShaped(head));

/** The whole: finding, testing, mining where it is mined, shaping, grinding, hafting. */
export const reckonAxe = (figures: MakingFigures, head: Head): Reckoning =>
  reckonSum(axeParts(figures, head), 'h', notShaped(head));

/**
 * Everything the model says of one axe.
 *
 * @example makeAxe(figures, head).totalHours.middle // about 26 for 120 × 52 × 27 mm of flint, ground all over
 */
export const makeAxe = (figures: MakingFigures, head: Head): AxeMaking => ({
  massGrams: reckonMass(figures, head),
  knappingMinutes: reckonPart(knapping(figures, head), 'min', notShaped(head)),
  knappingMinutesWithFailures: reckonPart(knappingWithFailures(figures, head), 'min', notShaped(head)),
  breakageRisk: reckonBreakage(figures, head),
  peckingHours: reckonPart(pecking(figures, head), 'h'),
  grindingHours: reckonPart(grinding(figures, head), 'h'),
  haftingHours: reckonPart(plainPart(figures, 'haft-hours', 'spread-haft'), 'h'),
  totalHours: reckonAxe(figures, head),
});
