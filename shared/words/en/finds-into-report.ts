import { quoted } from './problems.ts';

const many = (count: number, one: string, other: string): string => `${count} ${count === 1 ? one : other}`;

/** What the command line says of a finds list that goes into a site that is there. */
export const findsIntoReport = {
  notBoth: (): string =>
    '--into names the site the finds go into; expected no --out and no --site beside it, received both',
  onlyInto: (): string =>
    '--write, --new-places and --same-number belong to --into SITE.yaml; received them without it',
  sameNumberUnknown: (written: string, known: readonly string[]): string =>
    `expected --same-number ${known.join(', ')}; received ${quoted(written)}`,
  siteHasErrors: (path: string): string =>
    `${path}: expected a site without errors, so that no find of it is overlooked; received errors, and nothing was written. Look at them with: pitlore check ${path}`,
  unwritten: (path: string): string =>
    `${path}: the finds cannot be written into its files as they stand; nothing was written. Take them as a new site: pitlore finds LIST.csv --out DIR`,
  counts: (
    site: string,
    {
      fresh,
      same,
      replaced,
      waiting,
      leftOut,
    }: Readonly<Record<'fresh' | 'same' | 'replaced' | 'waiting' | 'leftOut', number>>,
  ): string =>
    `\nInto ${site}: ${many(fresh, 'new find', 'new finds')}, ${same} there already, the same, ${replaced} put in the record of one there, ${waiting} waiting for an answer, ${leftOut} left out\n`,
  questionsHead: (): string =>
    '\nQuestions about the site; --new-places and --same-number leave|replace|number-on answer them all alike, the Bench one by one\n',
  question: (file: string, row: number, reason: string, asked: string, labels: readonly string[]): string =>
    `${file}:${row}  ${reason}\n  ${asked}\n  ${labels.length === 0 ? '' : `choose   ${labels.join(' | ')}\n  `}waits\n`,
  row: (file: string, row: number, reason: string): string => `${file}:${row}  ${reason}\n`,
  replaced: (file: string, row: number, id: string): string => `${file}:${row}  put in the record of ${id}\n`,
  made: (pit: string, context: number): string =>
    `fill ${context} in ${pit} is made, with stand-ins to be replaced from your own plan and section\n`,
  nothingNew: (): string => '\nnothing of the list is new to the site; nothing was written\n',
  file: (path: string, isNew: boolean, isWritten: boolean, lines: readonly string[]): string =>
    `\n${isWritten ? 'wrote' : 'would write'} ${path}${isNew ? ', a new file' : ''}:\n${lines.map((line) => `  ${line}\n`).join('')}`,
  notYet: (): string => '\nnothing was written; add --write to write it\n',
} as const;
