import type { CoefficientId, MakingFigures, SpreadId } from './figures.ts';
import type { Part } from './reckoning.ts';
import type { Head } from './resolve.ts';
import { groundVolumeCm3, massGrams, massUsed, surfaceUsed } from './size.ts';

/** A part that is a figure of its own: one coefficient with its spread. */
export function plainPart(figures: MakingFigures, coefficient: CoefficientId, spread: SpreadId): Part {
  const figure = figures.coefficients[coefficient];
  const sigma = figures.spreads[spread];
  return { middle: figure.middle, sigma: sigma.middle, used: [figure, sigma] };
}

/** Grams of stone in the finished blank: what the axe keeps and what the grindstone takes. */
export const blankGrams = (figures: MakingFigures, head: Head): number =>
  massGrams(head) + head.stone.density.middle * groundVolumeCm3(figures, head);

/** Kilograms of nodule for one axe, the waste flakes included. @example noduleKg(figures, head) // 1.43 for a 245 g axe */
export const noduleKg = (figures: MakingFigures, head: Head): number =>
  blankGrams(figures, head) / (1 - figures.coefficients['waste-share'].middle) / 1000;

/** Hours of mining for the flint of one axe; 0 unless the flint is said to be mined. */
export function mining(figures: MakingFigures, head: Head): Part {
  if (!head.mined) return { middle: 0, sigma: 0, used: [] };
  const labour = plainPart(figures, 'mine-labour', 'spread-mine');
  return {
    middle: labour.middle * noduleKg(figures, head),
    sigma: labour.sigma,
    used: [
      ...labour.used,
      figures.coefficients['waste-share'],
      ...massUsed(figures, head),
      ...surfaceUsed(figures, head),
    ],
  };
}
