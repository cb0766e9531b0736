import type { ActivityOf } from '../activities/index.ts';
import { catalogues, say, tellNumber } from '../words/index.ts';
import { unitWords } from './estimate-unit.ts';

type Estimate = ActivityOf<'estimate'>;
const words = catalogues.en.estimate;

function amount({ low, value, high }: Estimate['trials'][number], unit: Estimate['unit']): string {
  const name = unitWords(unit, high ?? value ?? low ?? 2);
  if (low !== null && high !== null)
    return say(words.trialBetween, { low: tellNumber(low, 4), high: tellNumber(high, 4), unit: name });
  if (value !== null) return say(words.trialAbout, { value: tellNumber(value, 4), unit: name });
  return high === null
    ? say(words.trialAtLeast, { value: tellNumber(low ?? 0, 4), unit: name })
    : say(words.trialUpTo, { value: tellNumber(high, 4), unit: name });
}

const places = { inside: words.trialInside, above: words.trialAbove, below: words.trialBelow };

/** A published trial in one sentence: what, how long, and where it lies against the model. */
export function trialWords(trial: Estimate['trials'][number], unit: Estimate['unit']): string {
  const place = trial.place === null ? words.trialUnplaced : places[trial.place];
  const assumed = trial.assumed === null ? '' : `; ${say(words.trialAssumed, { what: trial.assumed })}`;
  return `${trial.about}: ${amount(trial, unit)}; ${place}${assumed}.`;
}
