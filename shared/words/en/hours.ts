import { oneOf, quoted } from './problems.ts';

/** A refusal of the making model, as plain values. */
type Refusal =
  | {
      readonly kind: 'out-of-range';
      readonly input: string;
      readonly received: number;
      readonly from: number;
      readonly to: number;
      readonly unit: string;
    }
  | { readonly kind: 'not-whole'; readonly input: string; readonly received: number }
  | { readonly kind: 'missing'; readonly input: string }
  | {
      readonly kind: 'unknown';
      readonly input: string;
      readonly received: string;
      readonly known: readonly string[];
    }
  | { readonly kind: 'not-counted'; readonly stone: string }
  | { readonly kind: 'form-needs-pecking'; readonly form: string; readonly stone: string };

const INPUTS: Readonly<Record<string, string>> = {
  lengthMm: 'length',
  widthMm: 'width',
  thicknessMm: 'thickness',
  diameterCm: 'diameter of the trunk',
  stakes: 'number of stakes',
  noduleKg: 'mass of the nodule',
};

/** An input of the making model in words. @example inputName('diameterCm') // 'diameter of the trunk' */
export const inputName = (input: string): string => INPUTS[input] ?? input;

/** Why the model does not answer, with the range or the words it knows; `near` is the known word most like the one written. */
export function refusalSentence(refusal: Refusal, near: string | null = null): string {
  switch (refusal.kind) {
    case 'out-of-range':
      return `${inputName(refusal.input)}: expected from ${refusal.from} to ${refusal.to} ${refusal.unit}; received ${refusal.received}. The model was made for that range and says nothing beyond it.`;
    case 'not-whole':
      return `${inputName(refusal.input)}: expected a whole number; received ${refusal.received}`;
    case 'missing':
      return `${inputName(refusal.input)}: expected a number; received none`;
    case 'unknown':
      return `${refusal.input}: expected ${oneOf(refusal.known, 'by pitlore hours --list')}; received ${quoted(refusal.received)}${near === null ? '' : `. Did you mean ${near}?`}`;
    case 'not-counted':
      return `${refusal.stone} is not flaked, and how often it breaks has not been counted that we know of`;
    case 'form-needs-pecking':
      return `form: ${refusal.form} is pecked, not flaked, and ${refusal.stone} is flaked; expected a stone that is pecked`;
    default:
      return refusal satisfies never;
  }
}

interface Told {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly unit: string;
  readonly status: string;
  readonly sources: readonly string[];
  readonly without?: readonly string[];
}

const LABELS: Readonly<Record<string, string>> = {
  massGrams: 'mass',
  knappingMinutes: 'knapping, no blank breaking',
  knappingMinutesWithFailures: 'knapping, broken blanks in',
  peckingHours: 'pecking',
  grindingHours: 'grinding and polishing',
  haftingHours: 'hafting',
  totalHours: 'the whole',
  fellingMinutes: 'felling',
};

const STATUSES: Readonly<Record<string, string>> = {
  RF: 'from a named source',
  DER: 'worked out from others',
  CP: 'common practice, no source',
  FM: 'from memory',
  ASM: 'rests on our judgement',
};

/** Three digits are all these figures bear. */
const short = (value: number): string => String(Number(value.toPrecision(3)));

/** What `pitlore hours` says besides its numbers. */
export const hoursWords = {
  notNumber: (option: string, written: string): string =>
    `--${option}: expected a number; received ${quoted(written)}`,
  tooMuch: (written: string): string => `expected options only; received ${quoted(written)}`,
  figures: (figures: Readonly<Record<string, Told>>): string => {
    const rows = Object.entries(figures).map(([name, figure]) => {
      const without = figure.without === undefined ? '' : `; without ${figure.without.join(', ')}`;
      const numbers = `${short(figure.middle)} ${figure.unit}`.padEnd(11);
      const ends = `(${short(figure.low)} to ${short(figure.high)})`.padEnd(17);
      return `${(LABELS[name] ?? name).padEnd(28)} ${numbers} ${ends} ${STATUSES[figure.status] ?? figure.status}${without}\n`;
    });
    return `${rows.join('')}In brackets: nine in ten lie between. Sources of each with --json.\n`;
  },
  list: (list: {
    readonly ids: Readonly<Record<string, readonly { readonly id: string; readonly label: string }[]>>;
    readonly defaults: Readonly<Record<string, string>>;
    readonly limits: Readonly<
      Record<string, { readonly from: number; readonly to: number; readonly unit: string }>
    >;
    readonly quantities: readonly { readonly id: string; readonly label: string; readonly unit: string }[];
  }): string => {
    const choices = Object.entries(list.ids).map(([name, rows]) => {
      const lines = rows.map(
        ({ id, label }) =>
          `  ${id.padEnd(20)} ${label}${id === list.defaults[name] ? ' (when none is given)' : ''}\n`,
      );
      return `--${name}\n${lines.join('')}`;
    });
    const limits = Object.entries(list.limits).map(
      ([name, { from, to, unit }]) => `  ${inputName(name).padEnd(24)} ${from} to ${to} ${unit}\n`,
    );
    const quantities = list.quantities.map(({ id, label, unit }) => `  ${id.padEnd(32)} ${label}, ${unit}\n`);
    return `${choices.join('')}limits\n${limits.join('')}quantities a lesson can ask for\n${quantities.join('')}`;
  },
  help: (): string => `pitlore hours --length MM --width MM --thickness MM [--stone ID --form ID --grinder ID --skill ID
               --preform ID --extent ID --finish ID --mined] [--json]   how long the axe takes
pitlore hours --fell CM [--wood ID --axe ID --skill ID] [--json]        how long the tree takes
pitlore hours --list [--json]                                           the ids, the limits, the quantities
`,
};
