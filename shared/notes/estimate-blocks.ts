import type { Sheet } from '../activities/index.ts';
import { trialWords } from '../telling/estimate-trial.ts';
import { amountWords, unitWords } from '../telling/estimate-unit.ts';
import { statusWords } from '../telling/status-words.ts';
import { catalogues, say, tellNumber } from '../words/index.ts';
import { heading, list, quiet, text, type NotesBlock } from './blocks.ts';

const told = catalogues.en.estimate;

/** What the making model says, how it is known, and the published trials beside it. */
export function estimateBlocks(sheet: Extract<Sheet, { part: 'estimate-answer' }>): readonly NotesBlock[] {
  const { record, unit, trials } = sheet;
  const spread = say(told.modelSpread.otherwise, {
    low: tellNumber(record.low),
    lower: tellNumber(record.lowerQuarter),
    upper: tellNumber(record.upperQuarter),
    high: tellNumber(record.high),
    unit: unitWords(unit, record.high),
  });
  const nearest = sheet.choice === null ? '' : ` ${say(told.modelNearest, { what: sheet.choice })}`;
  const without =
    record.without.length === 0 ? '' : ` ${say(told.without, { what: record.without.join(', ') })}`;
  return [
    text(sheet.question),
    {
      block: 'text',
      text: `${catalogues.en.estimatePapers.paperModel}: ${amountWords(unit, record.middle)}. ${spread}${nearest}`,
      isStrong: true,
    },
    quiet(`${say(told.statusLine, { status: statusWords(record.status) })}${without}`),
    heading(told.trialsTitle),
    trials.length === 0 ? text(told.trialsNone) : list(trials.map((trial) => trialWords(trial, unit))),
  ];
}
