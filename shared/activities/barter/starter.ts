import { starters } from '../../words/en/starters.ts';

/** A gathering to begin from: drafted, so that it can always be solved. */
export const startBarter = (): Readonly<Record<string, unknown>> => ({
  title: starters.barterTitle,
  make: { traders: 4, chain: 3 },
  minutes: 15,
});
