/** Sentences that stand in a site file until the lead writes their own. */
export const siteWords = {
  head: (): readonly string[] => [
    'Made from a finds list, which tells finds, contexts and nothing of the place.',
    'STAND-INS, to be replaced from your own plan and section: each pit’s centre, level, size and cut number, each fill’s',
    'description and thickness, the period, the story, the soils. Its finds are in the .finds.csv beside this file.',
  ],
  name: (): string => 'My site',
  organisation: (): string => 'write who dug it',
  story: (): string => 'Write here in two sentences what is being built, and what was found.',
  soils: (): string => 'write what the ground is, and what lasts in it',
  fill: (): string => 'write what the fill is',
  periodLabel: (): string => 'Late Neolithic',
  periodNote: (): string => 'a stand-in: write the period of your pits',
} as const;
