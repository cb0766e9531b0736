import type { AskedNumber } from '../kind.ts';
import type { EstimateActivity } from './activity.ts';
import type { EstimateBlock } from './schema.ts';

/** Below this an amount told in whole numbers is off by a quarter or more. */
const LEAST_WHOLE = 2;

/** The greatest number of an option: a size in mm, a diameter in cm. */
const greatestOf = ({ levers }: EstimateActivity): number =>
  Math.max(
    0,
    ...levers.flatMap(({ options }) =>
      options.flatMap(({ change }) => Object.values(change).filter((value) => typeof value === 'number')),
    ),
  );

/**
 * The numbers an estimate asks its pupils to read, enter or compare: the answer with its spread, told in whole numbers
 * where the youngest know no others; the ends of the line where a number is asked; sizes that may be changed. Sizes on the label of the find and the trials beneath the answer only name.
 */
export function numbersInEstimate(activity: EstimateActivity, block: EstimateBlock): readonly AskedNumber[] {
  const { asks, line, record, unit } = activity;
  const numbers: AskedNumber[] = [
    { value: record.high, form: unit === 'share' ? 'percent' : 'whole', what: 'answer', path: ['of'] },
  ];
  if (record.middle < LEAST_WHOLE)
    numbers.push({ value: record.middle, form: 'decimals', what: 'answer', path: ['of'] });
  for (const { how, bands } of asks) {
    // A choice is told by its name; its hours stand beside it only where the youngest can read them.
    if (how === 'choose') continue;
    const form = line.from < 1 ? 'decimals' : 'whole';
    numbers.push({ value: line.to, form, what: 'line', path: ['of'], bands });
  }
  const path = block.levers === undefined ? ['of'] : ['levers'];
  return [...numbers, { value: greatestOf(activity), form: 'whole', what: 'lever', path }];
}
