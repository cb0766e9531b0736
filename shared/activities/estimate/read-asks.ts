import type { Fault } from '../../lesson/problem.ts';
import type { Band } from '../../library/bands.ts';
import { estimateProblems } from '../../words/en/estimate-problems.ts';
import type { Ask, EstimateActivity } from './activity.ts';
import type { EstimateBlock } from './schema.ts';

/** How each band is asked when the block does not say: little ones hold amounts against each other first (judgement). */
const USUAL: { readonly [B in Band]: Ask } = {
  '4-5': 'choose',
  '5-7': 'choose',
  '7-9': 'choose',
  '9-11': 'number',
  '11-14': 'interval',
  '14-16': 'interval',
};

/** How each band of the lesson is asked, one entry a way, the youngest first. Only times can be chosen among comparisons. */
export function readAsks(
  block: EstimateBlock,
  bands: readonly Band[],
  isTime: boolean,
): { readonly asks: EstimateActivity['asks']; readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const asked = block.ask;
  if (asked !== undefined && typeof asked !== 'string') {
    for (const band of Object.keys(asked)) {
      if (bands.some((each) => each === band)) continue;
      const words = estimateProblems.bandElsewhere(band, bands);
      faults.push({ code: 'ask-unfit', grade: 'caution', path: ['ask', band], atKey: true, ...words });
    }
  }
  const asks: { how: Ask; bands: Band[] }[] = [];
  for (const band of bands) {
    const own = typeof asked === 'string' ? asked : asked?.[band];
    if (own === 'choose' && !isTime) {
      const path = typeof asked === 'string' ? ['ask'] : ['ask', band];
      if (!faults.some(({ code, grade }) => code === 'ask-unfit' && grade === 'error')) {
        faults.push({ code: 'ask-unfit', grade: 'error', path, ...estimateProblems.chooseNoTime(block.of) });
      }
    }
    const usual = !isTime && USUAL[band] === 'choose' ? 'number' : USUAL[band];
    const how = own ?? usual;
    const same = asks.find((each) => each.how === how);
    if (same === undefined) asks.push({ how, bands: [band] });
    else same.bands.push(band);
  }
  return { asks, faults };
}
