import { quoted } from './problems.ts';

/** What the command line says of a draft. */
export const draftReport = {
  needs: (): string =>
    'draft needs a site, bands and minutes: pitlore draft SITEID --bands 7-9,9-11 --minutes 45 [--seed S] [--out FILE.md]',
  wordUnknown: (what: string, written: string, near: string | null, known: readonly string[]): string =>
    `expected a ${what} (${known.join(', ')}); received ${quoted(written)}${near === null ? '' : `. Did you mean ${near}?`}`,
  minutesUnfit: (written: string): string =>
    `expected whole minutes from 5 to 180; received ${quoted(written)}`,
  reason: (sentence: string): string => `  ${sentence}\n`,
} as const;
