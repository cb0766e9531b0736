import type { MakingEvidence } from '../../library/making-evidence.ts';
import { placeExperiments, QUANTITIES, type QuantityId } from '../../making/index.ts';
import type { EstimateTrial } from './activity.ts';
import { asAsked } from './line-for-unit.ts';

/** Every published trial of a quantity, placed against the model at its own size; none is left out. */
export const trialsOf = (making: MakingEvidence, quantity: QuantityId): readonly EstimateTrial[] =>
  placeExperiments(making.figures, making.experiments, quantity).map((placed) => {
    const { id, about, low, value, high, status, sources, assumed } = placed.experiment;
    const amount = (each: number | null): number | null =>
      each === null ? null : asAsked(each, QUANTITIES[quantity].unit);
    return {
      id,
      about,
      low: amount(low),
      value: amount(value),
      high: amount(high),
      status,
      sources,
      place: placed.kind === 'placed' ? placed.place : null,
      assumed: assumed ?? null,
    };
  });
