/** A programme in the making: rows of text, and the columns that are yes or no. */
export interface Programme {
  readonly row: (terms: readonly string[], relation: string) => void;
  readonly yesNo: (name: string) => string;
  /** A column of whole numbers from 0. */
  readonly whole: (name: string, most: number) => string;
  /** The whole as LP text. A term is `+ 3 x_0`; an objective without terms asks only whether there is a plan. */
  readonly text: (objective: readonly string[]) => string;
}

const TERMS_A_LINE = 8;

/** Lines stay short: some readers of LP text stop at 255 characters. */
const lines = (terms: readonly string[]): string =>
  Array.from({ length: Math.ceil(terms.length / TERMS_A_LINE) }, (_, index) =>
    terms.slice(index * TERMS_A_LINE, (index + 1) * TERMS_A_LINE).join(' '),
  ).join('\n  ');

/** An empty programme. A row without terms is kept where it cannot hold (`0 = 1`), so that it is told. */
export function programme(): Programme {
  const rows: string[] = [];
  const columns = new Set<string>();
  const whole = new Map<string, number>();
  return {
    row: (terms, relation) =>
      void rows.push(` r${rows.length}: ${terms.length === 0 ? '0 nothing' : lines(terms)} ${relation}`),
    yesNo: (name) => {
      columns.add(name);
      return name;
    },
    whole: (name, most) => {
      whole.set(name, most);
      return name;
    },
    text: (objective) =>
      [
        'Minimize',
        ` goal: ${objective.length === 0 ? '0 nothing' : lines(objective)}`,
        'Subject To',
        ...rows,
        ' nil: nothing = 0',
        ...(whole.size === 0
          ? []
          : [
              'Bounds',
              ...[...whole].map(([name, most]) => ` 0 <= ${name} <= ${most}`),
              'General',
              ...[...whole.keys()].map((name) => ` ${name}`),
            ]),
        'Binary',
        ...[...columns].map((name) => ` ${name}`),
        'End',
        '',
      ].join('\n'),
  };
}

/** The terms of a sum, those that do not exist left out. */
export const sum = (names: readonly (string | null)[], factor = 1): readonly string[] =>
  names.flatMap((name) => (name === null ? [] : [`+ ${factor} ${name}`]));
