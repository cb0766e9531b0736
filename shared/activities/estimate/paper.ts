import { binsFor } from '../../estimating/index.ts';
import type { Sheet } from '../kind.ts';
import type { EstimateActivity, EstimateChoice } from './activity.ts';
import { recordChoice } from './score.ts';

const inWholeHours = (choice: EstimateChoice): EstimateChoice =>
  choice.hours < 1 ? choice : { ...choice, hours: Math.round(choice.hours) };

/** An estimate on paper: a sheet with the line and the empty strip, a class tally, the answer with all it stands on. */
export function paperEstimate(activity: EstimateActivity): readonly Sheet[] {
  const { title, question, unit, line, landmarks, find, given, asks, choices, strip, record } = activity;
  const asksNumber = asks.some(({ how }) => how !== 'choose');
  const base = { title, question, unit };
  const right = choices.length === 0 ? null : recordChoice(activity);
  return [
    {
      part: 'estimate-sheet',
      ...base,
      find,
      given,
      choices: choices.map(({ label }) => label),
      line: asksNumber ? line : null,
      isInterval: asks.some(({ how }) => how === 'interval'),
      landmarks: activity.wholeTo !== undefined ? landmarks.map(inWholeHours) : landmarks,
      strip,
    },
    {
      part: 'estimate-tally',
      ...base,
      choices: choices.map(({ label }) => label),
      line: asksNumber ? line : null,
      bins: asksNumber ? binsFor(line) : [],
    },
    {
      part: 'estimate-answer',
      ...base,
      find,
      given,
      record,
      choice: right === null ? null : (choices[right]?.label ?? null),
      line,
      used: activity.used,
      trials: activity.trials,
      citations: activity.citations,
      strip,
    },
  ];
}
