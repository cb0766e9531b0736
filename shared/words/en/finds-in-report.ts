import { findsInWords } from './finds-in.ts';
import { quoted } from './problems.ts';

interface Asked {
  readonly row: number;
  readonly column: number | null;
  readonly reason: string;
  readonly field: string;
  readonly asked: string;
  readonly proposals: readonly { readonly label: string }[];
  readonly taken: string | null;
}

const many = (count: number, one: string, other: string): string => `${count} ${count === 1 ? one : other}`;

/** What the command line says of a finds list. */
export const findsInReport = {
  needs: (): string =>
    'finds needs a finds list: pitlore finds FILE.csv [--site SITEID] [--out DIR] [--json], or pitlore finds FILE.csv --into SITE.yaml [--write]',
  siteUnknown: (written: string, near: string | null, known: readonly string[]): string =>
    `expected a site (${known.join(', ')}); received ${quoted(written)}${near === null ? '' : `. Did you mean ${near}?`}`,
  counts: (
    file: string,
    {
      rows,
      found,
      asked,
      waiting,
      leftOut,
    }: Readonly<Record<'rows' | 'found' | 'asked' | 'waiting' | 'leftOut', number>>,
  ): string =>
    `${file}: ${many(rows, 'row', 'rows')}: ${many(found, 'find', 'finds')}, ${asked} with questions (${waiting} wait for an answer), ${leftOut} left out\n`,
  encoding: (encoding: string): string => `read as ${encoding}\n`,
  columnsHead: (): string => '\nColumns\n',
  column: (
    index: number,
    header: string,
    field: string | null,
    unit: string | null,
    sureness: number,
    why: string,
  ): string =>
    `  ${index + 1}  ${header === '' ? '(no name)' : quoted(header)}: ${field === null ? 'not used' : findsInWords.fieldName(field)}${unit === null ? '' : `, read as ${unit}`} (${field === null ? '' : `sure to ${sureness.toFixed(2)}: `}${why.replace(/^not used: /, '')})\n`,
  pitsHead: (): string => '\nPits\n',
  pit: (pit: string, contexts: readonly number[], why: string | null): string =>
    `  ${pit}: ${contexts.join(', ')}${why === null ? '' : ` (guessed: ${why})`}\n`,
  guessesHead: (): string => '\nGuessed, where no cell says\n',
  guess: (field: string, rows: number, why: string): string =>
    `  ${findsInWords.fieldName(field)}: ${many(rows, 'find', 'finds')} (mostly: ${why})\n`,
  questionsHead: (): string => '\nQuestions, by row:column\n',
  question: (file: string, { row, column, reason, asked, proposals, taken }: Asked): string => {
    const choices = proposals.map(({ label }) => label).join(' | ');
    const meanwhile =
      taken === null ? 'waits' : taken === '' ? 'meanwhile left out' : `meanwhile ${quoted(taken)}`;
    return `${file}:${row}:${column === null ? 1 : column + 1}  ${reason}\n  ${asked}\n  ${choices === '' ? '' : `choose   ${choices}\n  `}${meanwhile}\n`;
  },
  leftOutHead: (): string => '\nLeft out\n',
  leftOut: (file: string, row: number, reason: string): string => `${file}:${row}  ${reason}\n`,
  written: (site: string, table: string, finds: number): string =>
    `\nwrote ${site} and ${table}: ${many(finds, 'find', 'finds')}. The site file holds stand-ins for what no finds list says; look at them with: pitlore check ${site}\n`,
  nothingToWrite: (): string => 'no find is ready; nothing was written',
} as const;
