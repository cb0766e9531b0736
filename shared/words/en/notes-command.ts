import { quoted } from './problems.ts';

/** What the command line says of teacher notes. */
export const notesCommand = {
  needs: (): string => 'notes needs a lesson: pitlore notes FILE [--band B] [--out X.md]',
  bandElsewhere: (written: string, bands: readonly string[]): string =>
    `expected a band of this lesson (${bands.join(', ')}); received ${quoted(written)}`,
  exists: (file: string): string => `${file} is there already; nothing was written. Choose another name.`,
  written: (file: string): string => `wrote ${file}: plain text, for any word processor.\n`,
};
