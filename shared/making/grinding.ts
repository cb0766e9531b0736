import type { MakingFigures } from './figures.ts';
import { type Part, timesOver } from './reckoning.ts';
import type { Head } from './resolve.ts';
import { groundVolumeCm3, surfaceCm2, surfaceUsed } from './size.ts';

/** Hours of pure rubbing that take a volume of stone away. @example rubbingHours(figures, head, 15.88) // 4.12 for flint by hand */
export const rubbingHours = (figures: MakingFigures, { stone, grinder }: Head, volumeCm3: number): number =>
  volumeCm3 /
  (figures.coefficients['grind-rate'].middle * stone.grindFactor.middle * grinder.grindFactor.middle);

/** Hours of finishing once the ridges are gone; they follow the surface, not the volume. */
export const finishHours = (figures: MakingFigures, head: Head): number =>
  (head.finish.hoursPer100Cm2.middle * head.extent.share.middle * surfaceCm2(figures, head)) / 100;

/** Hours at the grindstone by the clock, rests and rinsing included; exactly 0 for an unground axe. */
export function grinding(figures: MakingFigures, head: Head): Part {
  const session = figures.coefficients['session-factor'];
  const sigma = figures.spreads['spread-grind'];
  return {
    middle:
      session.middle *
      (rubbingHours(figures, head, groundVolumeCm3(figures, head)) + finishHours(figures, head)),
    sigma: sigma.middle,
    used: [
      figures.coefficients['grind-rate'],
      head.stone.grindFactor,
      head.grinder.grindFactor,
      head.finish.hoursPer100Cm2,
      session,
      sigma,
      ...surfaceUsed(figures, head),
    ],
  };
}

/** Hours of work at the grindstone: by the clock, times the people it takes. */
export const grindingWork = (figures: MakingFigures, head: Head): Part =>
  timesOver(grinding(figures, head), head.grinder.people);
