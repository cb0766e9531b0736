import type { Passage } from './passages.ts';

/** A number as it stands in a text. */
export interface Numeral {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** Its size, whatever its sign; a fraction's is its greater part. */
  readonly value: number;
  readonly form: 'whole' | 'decimals' | 'halves-quarters' | 'fractions' | 'percent' | 'negative-numbers';
}

const HALVES = '½¼¾';
const OTHERS = '⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞';

// A number that is no part of a word, a code (P7-165) or a longer number: its minus, its whole part, its decimals, what
// it is divided by, and a mark of per cent.
const NUMERAL = new RegExp(
  `(?<![\\p{L}\\p{N}.,/-])(−?)(\\d[\\d,]*)(?:\\.(\\d+)|\\/(\\d+))?( ?%| per cent\\b)?(?![\\p{L}\\p{N}/-])|[${HALVES}${OTHERS}]`,
  'gu',
);

function formOf(match: RegExpMatchArray): Numeral['form'] {
  const [text, minus, , decimals, divisor, percent] = match;
  if (percent !== undefined) return 'percent';
  if (minus !== undefined && minus !== '') return 'negative-numbers';
  if (divisor !== undefined) return divisor === '2' || divisor === '4' ? 'halves-quarters' : 'fractions';
  if (decimals !== undefined) return 'decimals';
  if (HALVES.includes(text)) return 'halves-quarters';
  return OTHERS.includes(text) ? 'fractions' : 'whole';
}

/** The numbers written in a passage, in figures. @example numeralsOf({ text: 'Pit 7: 4.5 cm', offset: 0 }).length // 2 */
export const numeralsOf = ({ text, offset }: Passage): readonly Numeral[] =>
  [...text.matchAll(NUMERAL)].map((match) => {
    const [whole, , digits = '0', , divisor = '0'] = match;
    return {
      from: offset + match.index,
      to: offset + match.index + whole.length,
      text: whole,
      value: Math.max(Number(digits.replaceAll(',', '')), Number(divisor)),
      form: formOf(match),
    };
  });
