import { starters } from '../../words/en/starters.ts';

/** An estimate to begin from: the hours in an axe of a common size. */
export const startEstimate = (): Readonly<Record<string, unknown>> => ({
  title: starters.estimateTitle,
  of: 'axe-hours',
  for: { 'length-mm': 120, 'width-mm': 55, 'thickness-mm': 28 },
  minutes: 10,
});
