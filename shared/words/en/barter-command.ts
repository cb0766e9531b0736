/** What the commands of the gathering say. */
export const barterCommandWords = {
  swapNeeds: (bands: readonly string[]): string =>
    `swap needs one world file: pitlore swap WORLD.yaml [--band ${bands.join('|')}]`,
  bandUnknown: (written: string, bands: readonly string[]): string =>
    `expected a band: ${bands.join(', ')}; received "${written}"`,
  pupilsUnfit: (written: string, least: number, most: number): string =>
    `expected --pupils with a whole number from ${least} to ${most}; received "${written}"`,
};
