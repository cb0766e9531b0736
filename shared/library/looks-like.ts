import type { Find } from './library.ts';

/** Two lengths this near are one length to the eye. Our judgement (ASM): about a tenth. */
const NEAR = 0.1;

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= NEAR * Math.max(a, b);

/**
 * Whether a pupil could not tell two finds apart by what is drawn and said of them before the record is read: type,
 * material, state, side, decoration, number of pieces, and size to about a tenth.
 */
export const looksLike = (a: Find, b: Find): boolean =>
  a.attributes['object-type'] === b.attributes['object-type'] &&
  a.attributes.material === b.attributes.material &&
  a.attributes.state === b.attributes.state &&
  a.side === b.side &&
  a.decoration === b.decoration &&
  a.count > 1 === b.count > 1 &&
  isNear(a.lengthMm, b.lengthMm) &&
  isNear(a.widthMm, b.widthMm) &&
  isNear(a.thicknessMm, b.thicknessMm);
