import { quoted } from './problems.ts';
import { tellNumber } from '../tell-number.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

type Form = 'whole' | 'decimals' | 'halves-quarters' | 'fractions' | 'percent' | 'negative-numbers';

/** What a number is of, with how to mend it where it is too much. */
const uses = {
  answer: { of: 'in the answer', mend: 'ask for another quantity or size' },
  line: {
    of: 'at the end of the line',
    mend: 'write "ask: choose" for the younger, or ask for another quantity',
  },
  lever: { of: 'in what may be changed afterwards', mend: 'leave it out of "levers"' },
  held: { of: 'of one thing in a hand', mend: 'write fewer' },
  worth: { of: 'as a worth', mend: 'write smaller worths in the same order' },
  pupils: { of: 'cards with numbers', mend: 'deal to fewer pupils at a time' },
  pieces: { of: 'pieces of one kind in a pit', mend: 'name kinds with fewer pieces' },
  likeness: { of: 'as a measure of how alike', mend: 'write "ask: places", or "by: brainerd-robinson"' },
  shuffles: { of: 'shuffles counted', mend: 'write "ask: places"' },
  steps: { of: 'steps to count', mend: 'use fewer steps' },
  things: { of: 'finds to count', mend: 'use fewer finds' },
} as const;

/** What a number of an activity may be of. */
export type NumberUse = keyof typeof uses;

const forms: Readonly<Record<Exclude<Form, 'whole'>, string>> = {
  decimals: 'no decimals',
  'halves-quarters': 'no fractions',
  fractions: 'no fractions but halves and quarters',
  percent: 'no per cent',
  'negative-numbers': 'no numbers below nought',
};

const expected = (form: Form, band: string, most: number): string =>
  `${form === 'whole' ? `whole numbers up to ${tellNumber(most, 8)}` : forms[form]} at ages ${band} (our judgement)`;

const OR_OLDER = 'or make the lesson for an older band';

/** What is said of numbers beyond those a band has met. */
export const numberProblems = {
  asked: (what: NumberUse, value: number, form: Form, band: string, most: number): Sentences => ({
    expected: expected(form, band, most),
    received: `${value < 100 ? tellNumber(value) : tellNumber(Math.round(value), 8)} ${uses[what].of}`,
    mend: `${uses[what].mend}, ${OR_OLDER}`,
  }),
  written: (text: string, form: Form, band: string, most: number): Sentences => ({
    expected: expected(form, band, most),
    received: quoted(text),
    mend: `say it in words or leave it out, ${OR_OLDER}`,
  }),
};
