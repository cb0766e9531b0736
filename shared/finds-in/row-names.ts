import { findsInWords as words } from '../words/en/finds-in.ts';
import { isFormula } from './read-number.ts';
import { answered, ask, type OpenRow, type Reading } from './reading.ts';

const GREATEST = 100_000;

/** "(212)", "ctx 212", "212." hold one context; "12.5", "-3", "212a" may not. */
const PLAIN_CONTEXT = /^\p{L}*\.?\s*[([<#]*\s*\d+\s*[)\]>]*\.?$/u;
const DAY =
  /\d\s*-\s*(?:jan|feb|mar|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez)|^\d{1,2}[/.]\d{1,2}[/.]\d{2,4}$/i;

const isWhole = (value: number): boolean => Number.isInteger(value) && value > 0 && value <= GREATEST;

/** The one number a lead's answer names, as "212", "(212)" or "SF 12"; null where it names none, or several. */
function saidNumber(given: string): number | null {
  const [, digits] = /^[^\d.,-]*(\d+)[^\d.,-]*$/.exec(given) ?? [];
  return digits !== undefined && isWhole(Number(digits)) ? Number(digits) : null;
}

/**
 * The context of a row. Round brackets number a fill by the habit of the trade and are read; square ones number a cut.
 *
 * @param above The context of the row above, proposed first: lists are commonly in order.
 */
export function readContext(reading: Reading, open: OpenRow, above: number | null): number | null {
  const written = open.textOf('context');
  const given = answered(reading, open, 'context');
  const said = given === undefined ? null : saidNumber(given);
  if (said !== null) return said;
  const groups = isFormula(written) ? [] : (written.match(/\d+/g) ?? []).map(Number).filter(isWhole);
  const [first] = groups;
  const fromAbove = above === null ? [] : [{ value: String(above), label: words.rowAbove(String(above)) }];
  // An answer that names no number is told of, not passed over.
  if (given !== undefined) {
    const asked = words.unfitAnswer('context', given);
    ask(open, 'context', { reason: 'number-unclear', asked, proposals: fromAbove, taken: null });
    return null;
  }
  const isPlain = groups.length === 1 && PLAIN_CONTEXT.test(written);
  // "03-Apr" was 3-4 before a spreadsheet took it for a day: neither number is the context for certain.
  if (first === undefined || DAY.test(written)) {
    const asked = isFormula(written) ? words.formula('context', written) : words.contextUnclear(written);
    ask(open, 'context', {
      reason: isFormula(written) ? 'formula' : 'number-unclear',
      asked,
      proposals: fromAbove,
      taken: null,
    });
    return null;
  }
  if (!isPlain) {
    const proposals = [...new Set(groups)].map((each) => ({ value: String(each), label: String(each) }));
    ask(open, 'context', {
      reason: 'number-unclear',
      asked: words.contextUnclear(written),
      proposals: [...proposals, ...fromAbove],
      taken: String(first),
      isShared: true,
    });
    return first;
  }
  if (/^\s*\[/.test(written)) {
    const kept = { value: String(first), label: words.asWritten(String(first)) };
    ask(open, 'context', {
      reason: 'cut-not-fill',
      asked: words.cutNotFill(written),
      proposals: [kept, ...fromAbove],
      taken: String(first),
      isShared: true,
    });
  }
  return first;
}

/** The small-find number of a row as written; null where none can be read and one is to be given. */
export function readSmallFind(
  reading: Reading,
  open: OpenRow,
): { readonly number: number | null; readonly isSettled: boolean } {
  const written = open.textOf('small-find');
  const given = answered(reading, open, 'small-find');
  const said = given === undefined ? null : saidNumber(given);
  if (said !== null) return { number: said, isSettled: true };
  const last = isFormula(written) ? undefined : /(\d+)\D*$/.exec(written)?.[1];
  const number = last === undefined ? null : Number(last);
  if (number === null || !isWhole(number)) return { number: null, isSettled: false };
  if (!/^\D*(?:\d+\s*[/\\<:_-]\s*)*\d+\s*>?$/.test(written)) {
    const proposals = [{ value: String(number), label: String(number) }];
    ask(open, 'small-find', {
      reason: 'number-unclear',
      asked: words.numberUnclear(written),
      proposals,
      taken: String(number),
    });
  }
  return { number, isSettled: false };
}

/** The name of a pit as the product keeps it, letters and digits; null where none can be read. @example pitName('Pit 3') // 'P3' */
export function pitName(written: string): string | null {
  const bare = written
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/\b(?:pit|cut|feature|grube|fosse|kuil|fosa|hoyo)\b\.?/i, 'P')
    .replace(/[^A-Za-z0-9]/g, '');
  const named = /^\d/.test(bare) ? `P${bare}` : bare;
  return /^[A-Za-z][A-Za-z0-9]*\d[A-Za-z0-9]*$|^[A-Za-z]{1,12}$/.test(named) && named.length <= 20
    ? named
    : null;
}

/** The pit as a column names it; undefined where the list has no such column or the cell is empty. */
export function readPit(reading: Reading, open: OpenRow): string | null | undefined {
  const given = answered(reading, open, 'pit');
  const written = given ?? open.textOf('pit');
  if (open.columnOf('pit') === null && given === undefined) return undefined;
  if (written === '' || reading.isNotRecorded(written)) return undefined;
  const pit = isFormula(written) ? null : pitName(written);
  if (pit === null)
    ask(open, 'pit', {
      reason: 'number-unclear',
      asked: words.pitUnclear(written),
      proposals: [],
      taken: null,
      isShared: true,
    });
  return pit;
}
