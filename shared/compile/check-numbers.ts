import type { AskedNumber } from '../activities/index.ts';
import { numberLimits, type Curricula, type NumberLimits } from '../curriculum/index.ts';
import { numeralsOf, problemAt, type LessonBlock, type Problem, type SourceText } from '../lesson/index.ts';
import type { Band } from '../library/bands.ts';
import { numberProblems } from '../words/en/number-problems.ts';

/** A limit that a number goes beyond: the band's whole numbers, or a kind of number it has not met. */
type Beyond = { readonly band: Band; readonly limits: NumberLimits };

const isBeyond = (
  { wholeNumbersTo, ideas }: NumberLimits,
  value: number,
  form: AskedNumber['form'],
): boolean => value > wholeNumbersTo || (form !== 'whole' && !ideas.has(form));

/** The youngest band that a number is beyond; null where all may meet it. */
function youngestBeyond(
  curricula: Curricula,
  bands: readonly Band[],
  value: number,
  form: AskedNumber['form'],
): Beyond | null {
  for (const { band } of curricula.steps) {
    const limits = bands.includes(band) ? numberLimits(curricula, band) : null;
    if (limits !== null && isBeyond(limits, value, form)) return { band, limits };
  }
  return null;
}

/**
 * Cautions for the numbers of an activity that its pupils have not met: those it asks or shows, each at the key it comes
 * from, and those written in its words. Numbers that only name (a find's number, a size on its label) are not asked of
 * anyone and are left alone.
 */
export function numberCautions(
  source: SourceText,
  block: LessonBlock,
  asked: readonly AskedNumber[],
  bands: readonly Band[],
  curricula: Curricula,
): readonly Problem[] {
  const code = { code: 'number-beyond-band', grade: 'caution' } as const;
  const fromAsked = asked.flatMap(({ value, form, what, path, bands: own }): readonly Problem[] => {
    const asks = own === undefined ? bands : bands.filter((band) => own.includes(band));
    const beyond = youngestBeyond(curricula, asks, value, form);
    if (beyond === null) return [];
    const { band, limits } = beyond;
    const isLarge = value > limits.wholeNumbersTo;
    const words = numberProblems.asked(what, value, isLarge ? 'whole' : form, band, limits.wholeNumbersTo);
    return [problemAt(source, block.locate(path), { ...code, ...words })];
  });
  const fromWords = block.passages.flatMap(numeralsOf).flatMap((numeral): readonly Problem[] => {
    const { value, form, text } = numeral;
    const beyond = youngestBeyond(curricula, bands, value, form);
    if (beyond === null) return [];
    const { band, limits } = beyond;
    const isLarge = value > limits.wholeNumbersTo;
    const words = numberProblems.written(text, isLarge ? 'whole' : form, band, limits.wholeNumbersTo);
    return [problemAt(source, numeral, { ...code, ...words })];
  });
  return [...fromAsked, ...fromWords];
}
