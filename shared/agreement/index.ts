export { adjustedRandIndex } from './adjusted-rand.ts';
export { balancedAccuracy } from './balanced-accuracy.ts';
export { cohenKappa } from './cohen-kappa.ts';
export { fleissKappa } from './fleiss-kappa.ts';
export { placedAgreement, type PlacedAgreement, type PlacedItem } from './placed-agreement.ts';
export { weightedKappa } from './weighted-kappa.ts';
export type { Measured } from './measured.ts';
