/** What the verb `papers` says. */
export const papersCommandWords = {
  needs: (): string =>
    'papers needs a lesson: pitlore papers FILE --out DIR [--size a4|letter] [--large] [--backs]',
  sizeUnknown: (written: string, known: readonly string[]): string =>
    `expected a size of paper after --size: ${known.join(' or ')}; received "${written}"`,
  exists: (files: readonly string[]): string =>
    `there already, so nothing was written: ${files.join(', ')}. Choose another folder with --out.`,
  noBrowser: (named: string | undefined): string =>
    named === undefined
      ? 'no browser of the Chromium family was found on the path or in the usual places, so these are pages to print from any browser. CHROMIUM_PATH names one.'
      : `CHROMIUM_PATH names ${named}, which cannot be run, so these are pages to print from any browser.`,
  browserEnded: (path: string, told: string): string =>
    `${path} ended before it printed${told === '' ? '' : `: ${told}`}`,
  printed: (file: string, pages: number, bytes: number): string =>
    `wrote ${file}: ${pages} ${pages === 1 ? 'page' : 'pages'}, ${bytes} bytes\n`,
  saved: (file: string, bytes: number): string => `wrote ${file}: ${bytes} bytes\n`,
};
