import { isUnit, type Unit } from './fields.ts';

/** What stands in a cell that ought to hold a number. */
export type ReadNumber =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly unit: Unit | null;
      /** "c. 30", "30?", "30+": the number is not exact. */
      readonly isRough: boolean;
      /** "1,234" and "1.234": the same number with its point taken for a mark of thousands; null where it cannot be. */
      readonly other: number | null;
    }
  | { readonly kind: 'range'; readonly low: number; readonly high: number; readonly unit: Unit | null }
  | { readonly kind: 'text' };

const NUMBER = String.raw`\d[\d'’\u00A0\u202F ]*(?:[.,]\d+)*|[.,]\d+`;
const ROUGH = String.raw`(?:c(?:a|irca)?\.?(?![a-z])|approx\.?|about|~|≈|±|<|>|≤|≥|etwa|env\.?|um)`;
const UNIT = String.raw`(mm|cm|mg|kg|grams?|grammes?|gr|g|millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?|m|in(?:ch(?:es)?)?|")`;
const SINGLE = new RegExp(String.raw`^(${ROUGH})?\s*(${NUMBER})\s*${UNIT}?\s*([?+*]|approx\.?)?$`, 'i');
const RANGE = new RegExp(
  String.raw`^(?:${ROUGH})?\s*(${NUMBER})\s*(?:-|–|—|to|bis|à|tot)\s*(${NUMBER})\s*${UNIT}?$`,
  'i',
);

function unitOf(written: string | undefined): Unit | null {
  if (written === undefined) return null;
  const word = written.toLowerCase();
  if (isUnit(word)) return word;
  if (word === '"' || word.startsWith('in')) return 'in';
  if (word.startsWith('milli')) return 'mm';
  if (word.startsWith('centi')) return 'cm';
  return word.startsWith('m') ? 'm' : 'g';
}

/** A number as written, and what else it could be where its only mark could part thousands. */
function valueOf(
  written: string,
  usesComma: boolean,
): { readonly value: number; readonly other: number | null } {
  const digits = written.replace(/['’\u00A0\u202F ]/g, '');
  const marks = digits.match(/[.,]/g) ?? [];
  const [first] = marks;
  if (marks.length > 1) {
    // Two kinds of mark: the last is the decimal one. One kind repeated: thousands.
    const last = marks.at(-1) ?? '.';
    const isMixed = marks.some((mark) => mark !== last);
    const at = isMixed ? digits.lastIndexOf(last) : digits.length;
    const bare = `${digits.slice(0, at).replace(/[.,]/g, '')}${digits.slice(at)}`;
    return { value: Number(bare.replace(',', '.')), other: null };
  }
  const asDecimal = Number(digits.replace(',', '.'));
  if (first === undefined || !/^[1-9]\d{0,2}[.,]\d{3}$/.test(digits))
    return { value: asDecimal, other: null };
  const asThousands = Number(digits.replace(/[.,]/, ''));
  const isOwnMark = first === (usesComma ? ',' : '.');
  return isOwnMark ? { value: asDecimal, other: null } : { value: asThousands, other: asDecimal };
}

/**
 * Reads a number as people write it: units, rough marks, decimal commas, ranges. Anything else is text.
 *
 * @param usesComma True in a list whose decimals are written with a comma.
 * @example readNumber('0.41kg', false) // { kind: 'number', value: 0.41, unit: 'kg', isRough: false, other: null }
 */
export function readNumber(text: string, usesComma: boolean): ReadNumber {
  const written = text.trim();
  if (written.length === 0 || written.length > 40) return { kind: 'text' };
  const single = SINGLE.exec(written);
  if (single !== null) {
    const [, before, digits = '', unit, after] = single;
    const { value, other } = valueOf(digits.trim(), usesComma);
    const isRough = before !== undefined || after !== undefined;
    return Number.isFinite(value)
      ? { kind: 'number', value, unit: unitOf(unit), isRough, other }
      : { kind: 'text' };
  }
  const range = RANGE.exec(written);
  if (range !== null) {
    const [, low = '', high = '', unit] = range;
    const ends = [valueOf(low.trim(), usesComma).value, valueOf(high.trim(), usesComma).value] as const;
    if (ends.every(Number.isFinite)) {
      return { kind: 'range', low: Math.min(...ends), high: Math.max(...ends), unit: unitOf(unit) };
    }
  }
  return { kind: 'text' };
}

/** True for a cell that a spreadsheet works out, or failed to. @example isFormula('=A1') // true */
export const isFormula = (text: string): boolean =>
  /^\s*(?:[=@]|[+-][A-Za-z$]+[\d(]|#(?:REF|N\/A|VALUE|NAME|DIV\/0|NUM|NULL|###))/i.test(text);
