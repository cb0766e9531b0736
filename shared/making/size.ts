import type { MakingFigures } from './figures.ts';
import { type Ends, type Part, reckonProduct, type Reckoning } from './reckoning.ts';
import type { Head } from './resolve.ts';

/** Mass in g as one number: share of the box filled × density × length × width × thickness. */
export const massGrams = ({ form, stone, lengthMm, widthMm, thicknessMm }: Head): number =>
  (form.shapeFactor.middle * stone.density.middle * lengthMm * widthMm * thicknessMm) / 1000;

/** How the filled share differs between whole axes, brought to this form. */
export function shapeEnds(figures: MakingFigures): Ends {
  const { low, middle, high } = figures.coefficients['shape-factor'];
  return { low: low ?? middle, middle, high: high ?? middle };
}

/** Mass of an axe head of known size, in g; the spread is that of the share of its box that an axe fills. */
export const reckonMass = (figures: MakingFigures, head: Head): Reckoning =>
  reckonProduct(massGrams(head), [shapeEnds(figures)], 'g', massUsed(figures, head));

export const massUsed = (figures: MakingFigures, { form, stone }: Head): Part['used'] => [
  form.shapeFactor,
  stone.density,
  figures.coefficients['shape-factor'],
];

/**
 * Girth at the middle, in cm. Oval: Ramanujan 1914, Quarterly Journal of Mathematics 45: 350-372, first approximation
 * for an ellipse. Four-sided: twice width and thickness, less for rounded edges.
 */
export function girthCm(figures: MakingFigures, { form, widthMm, thicknessMm }: Head): number {
  const a = widthMm / 20;
  const b = thicknessMm / 20;
  switch (form.section) {
    case 'oval':
      return Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
    case 'four-sided':
      return 4 * (a + b) * figures.coefficients['taper-factor-four-sided'].middle;
    default:
      return form.section satisfies never;
  }
}

/** Surface of the head in cm². @example surfaceCm2(figures, head) // 122.1 for 120 × 52 × 27 mm, oval */
export const surfaceCm2 = (figures: MakingFigures, head: Head): number =>
  (figures.coefficients['taper-factor'].middle * girthCm(figures, head) * head.lengthMm) / 10;

/** Stone to be ground away, in cm³. @example groundVolumeCm3(figures, head) // 15.9 for a good blank, all over */
export const groundVolumeCm3 = (figures: MakingFigures, head: Head): number =>
  (head.extent.share.middle * surfaceCm2(figures, head) * head.preform.depthMm.middle) / 10;

export const surfaceUsed = (figures: MakingFigures, { form, extent, preform }: Head): Part['used'] => [
  figures.coefficients['taper-factor'],
  ...(form.section === 'four-sided' ? [figures.coefficients['taper-factor-four-sided']] : []),
  extent.share,
  preform.depthMm,
];
