import type { MakingFigures } from './figures.ts';
import { type QuantityId, reckonQuantity } from './quantities.ts';
import type { Reckoning } from './reckoning.ts';
import type { MakingRequest, Refusal } from './request.ts';
import type { Standing } from './standing.ts';

/** A published trial: what somebody measured, or says it takes. */
export interface Experiment {
  readonly id: string;
  readonly about: string;
  readonly of: QuantityId;
  /** What was made or felled, as far as is told; null where too little is told to set it against the model. */
  readonly inputs: MakingRequest | null;
  /** "At least". */
  readonly low: number | null;
  readonly value: number | null;
  /** "Up to". */
  readonly high: number | null;
  readonly unit: string;
  readonly status: Standing;
  readonly sources: readonly string[];
  /** Calibration trials helped to set a coefficient; independent ones did not. */
  readonly use: 'calibration' | 'independent';
  /** What had to be assumed of it: "size". */
  readonly assumed?: string;
  readonly note?: string;
}

/** Where a trial lies against the model's 5 to 95 per cent. */
export type Place = 'inside' | 'below' | 'above';

/** A trial set against the model at the trial's own size and stone, or why it cannot be. */
export type PlacedExperiment =
  | {
      readonly kind: 'placed';
      readonly experiment: Experiment;
      readonly place: Place;
      readonly model: Reckoning;
    }
  | { readonly kind: 'too-little-told'; readonly experiment: Experiment }
  | { readonly kind: 'beyond-model'; readonly experiment: Experiment; readonly refusals: readonly Refusal[] };

/** The one number that stands for a trial: what it took, else the middle of its ends by ratio, else its only end. */
export function standFor({ low, value, high }: Pick<Experiment, 'low' | 'value' | 'high'>): number | null {
  if (value !== null) return value;
  return low !== null && high !== null ? Math.sqrt(low * high) : (low ?? high);
}

/**
 * Where a trial lies against a spread. One told as a range is inside when any of it is.
 *
 * @example placeOn({ low: 10, high: 60 }, { low: null, value: 75, high: null }) // 'above'
 */
export function placeOn(
  spread: Pick<Reckoning, 'low' | 'high'>,
  trial: Pick<Experiment, 'low' | 'value' | 'high'>,
): Place | null {
  const stands = standFor(trial);
  if (stands === null) return null;
  if ((trial.high ?? stands) < spread.low) return 'below';
  if ((trial.low ?? stands) > spread.high) return 'above';
  return 'inside';
}

/**
 * Sets every trial of a quantity against the model. None is left out: one outside the model's range is told as outside.
 *
 * @example placeExperiments(figures, experiments, 'grinding-hours')
 */
export const placeExperiments = (
  figures: MakingFigures,
  experiments: readonly Experiment[],
  quantity: QuantityId,
): PlacedExperiment[] =>
  experiments
    .filter(({ of }) => of === quantity)
    .map((experiment) => {
      if (experiment.inputs === null) return { kind: 'too-little-told', experiment };
      const model = reckonQuantity(figures, quantity, experiment.inputs);
      if (!model.ok) return { kind: 'beyond-model', experiment, refusals: model.refusals };
      const place = placeOn(model.value, experiment);
      return place === null
        ? { kind: 'too-little-told', experiment }
        : { kind: 'placed', experiment, place, model: model.value };
    });
