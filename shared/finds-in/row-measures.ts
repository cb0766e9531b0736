import { findsInWords as words } from '../words/en/finds-in.ts';
import { converted, isUnit, LENGTHS, ownUnit, UNITS, type LengthField, type Unit } from './fields.ts';
import { isFormula, readNumber } from './read-number.ts';
import { answered, ask, type OpenRow, type Reading } from './reading.ts';
import type { Proposal, Reason } from './question.ts';

/** The limits of a site file. */
const GREATEST = 100_000;
/** Less than this is no weight that a balance of the trade shows. ASM. */
const LEAST_MASS_G = 0.001;
/** Shape factors are spreads of judgement: a weight is asked about when it is outside them by a third. ASM. */
const SLACK = 4 / 3;

export type Measure = LengthField | 'mass-g';

/** A measure as read: its value, and whether a cell or the lead gave it; null value where there is none. */
export interface Measured {
  readonly value: number | null;
  /** True where the lead has said so: it is not doubted again. */
  readonly isSettled: boolean;
  /** Why there is none, to be asked once what is usual is known; null where nothing is written. */
  readonly lack: { readonly reason: Reason; readonly asked: string } | null;
  /** The text it was read from: its own cell's, or its part of a cell of three measures. */
  readonly written: string;
}

const proposal = (
  value: number,
  field: Measure,
  label: (shown: string) => string = (shown) => shown,
): Proposal => ({
  value: String(value),
  label: label(words.measured(value, field)),
});

const inLimits = (value: number, field: Measure): boolean =>
  value > 0 && value <= GREATEST && (field !== 'mass-g' || value >= LEAST_MASS_G);

/** True for the units of a field: of weight, or of length. */
const isUnitOf = (field: Measure, unit: Unit): boolean =>
  (field === 'mass-g') === ['g', 'kg', 'mg'].includes(unit);

/** What the lead said of a measure: in its own unit where none is said, as "3.8 cm" where one is; null where it is no number. */
function saidMeasure(given: string, field: Measure, usesComma: boolean): number | null {
  if (given === '') return null;
  const bare = Number(given);
  if (Number.isFinite(bare)) return bare;
  const read = readNumber(given, usesComma);
  if (read.kind !== 'number' || read.isRough || read.other !== null) return null;
  if (read.unit === null) return read.value;
  return isUnitOf(field, read.unit) ? converted(read.value, read.unit) : null;
}

/** Reads a measure of a row; questions about what is written are asked at once, about what is not by the caller. */
export function readMeasure(
  reading: Reading,
  open: OpenRow,
  field: Measure,
  source: { readonly written: string; readonly unit: Unit | null },
  usesComma: boolean,
): Measured {
  const { written } = source;
  const none = (reason: Reason, asked: string): Measured => ({
    value: null,
    isSettled: false,
    lack: { reason, asked },
    written,
  });
  const given = answered(reading, open, field);
  if (given !== undefined) {
    const value = saidMeasure(given, field, usesComma);
    if (given === '' && field === 'mass-g') return { value: null, isSettled: true, lack: null, written };
    if (value !== null && inLimits(value, field)) return { value, isSettled: true, lack: null, written };
    return none('not-a-number', words.unfitAnswer(field, given));
  }
  if (written === '') return { value: null, isSettled: false, lack: null, written };
  if (isFormula(written)) return none('formula', words.formula(field, written));
  if (reading.isNotRecorded(written)) return none('not-recorded', words.notRecorded(field, written));
  const read = readNumber(written, usesComma);
  if (read.kind === 'text') return none('not-a-number', words.notNumber(field, written));

  const own = ownUnit(field);
  const columnUnit = source.unit ?? own;
  const isOwnKind = (unit: Unit | null): unit is Unit => unit !== null && isUnitOf(field, unit);
  const unit = isOwnKind(read.unit) ? read.unit : columnUnit;
  if (unit === null || own === null) return none('not-a-number', words.notNumber(field, written));
  if (read.unit !== null && !isOwnKind(read.unit))
    return none('not-a-number', words.notNumber(field, written));
  const put = (value: number, reason: Reason, asked: string, more: readonly Proposal[]): Measured => {
    ask(open, field, {
      reason,
      asked,
      proposals: [proposal(value, field), ...more],
      taken: String(value),
      received: written,
    });
    return { value, isSettled: false, lack: null, written };
  };
  if (read.kind === 'range') {
    const [low, high] = [converted(read.low, unit), converted(read.high, unit)];
    if (!inLimits(low, field) || !inLimits(high, field))
      return none('beyond-limits', words.beyondLimits(field, written));
    const middle = Number(((low + high) / 2).toPrecision(4));
    return put(middle, 'range', words.range(field, written), [proposal(low, field), proposal(high, field)]);
  }
  const value = converted(read.value, unit);
  if (value === 0) return none('nothing-measured', words.nothing(field));
  if (!inLimits(value, field)) return none('beyond-limits', words.beyondLimits(field, written));
  if (read.other !== null) {
    const other = converted(read.other, unit);
    return put(value, 'separator-unclear', words.separator(field, written), [proposal(other, field)]);
  }
  if (read.unit !== null && read.unit !== columnUnit && columnUnit !== null) {
    const bare = converted(read.value, columnUnit);
    return put(value, 'other-unit', words.otherUnit(field, written, columnUnit), [
      proposal(bare, field, (label) => words.inUnit(label, columnUnit)),
    ]);
  }
  if (read.isRough) return put(value, 'rough', words.rough(field, written), []);
  return { value, isSettled: false, lack: null, written };
}

/** Three measures in one cell, "45 x 30 x 12 mm": each with the unit the cell ends in. */
export function splitDimensions(written: string): readonly string[] {
  const parts = written.split(/\s*[x×*]\s*/i);
  const unit = /([a-z]+)\s*$/i.exec(parts.at(-1) ?? '')?.[1]?.toLowerCase();
  if (unit === undefined || !isUnit(unit)) return parts;
  return parts.map((part) => (/[a-z]\s*$/i.test(part) ? part : `${part} ${unit}`));
}

/** A size for what was not measured. */
export interface Fill {
  readonly valueMm: number;
  readonly isFromWeight: boolean;
}

/** Where a measure is missing: from the weight where only one is, else what is usual at the size the others show. */
export function fillMeasure(
  reading: Reading,
  object: string,
  material: string | null,
  field: LengthField,
  known: Readonly<Partial<Record<LengthField, number>>>,
  massG: number | null,
): Fill | null {
  const usual = reading.usual(object);
  const factor = reading.vocabulary.objectTypes.find(({ id }) => id === object)?.shapeFactor;
  const density = reading.vocabulary.materials.find(({ id }) => id === material)?.densityGPerCm3;
  const others = LENGTHS.filter((length) => length !== field).map((length) => known[length]);
  const [first, second] = others;
  if (massG !== null && factor && density && first !== undefined && second !== undefined) {
    const share = (factor.least + factor.greatest) / 2;
    const valueMm = Math.round((massG * 1000) / (share * density.value * first * second));
    if (valueMm >= 1 && valueMm <= 10 * Math.max(first, second)) return { valueMm, isFromWeight: true };
  }
  if (usual === null) return null;
  const place = LENGTHS.indexOf(field);
  const ratios = LENGTHS.flatMap((length, index) => {
    const value = known[length];
    const size = usual['size-mm'][index];
    return value === undefined || size === undefined ? [] : [value / size];
  });
  const ratio = ratios.length === 0 ? 1 : ratios.reduce((sum, each) => sum + each, 0) / ratios.length;
  return { valueMm: Math.max(1, Math.round((usual['size-mm'][place] ?? 1) * ratio)), isFromWeight: false };
}

/** Asks about a size outside what is usual for its object; the value stands as written. */
export function doubtSize(
  reading: Reading,
  open: OpenRow,
  object: string,
  measured: Readonly<Record<LengthField, Measured>>,
): boolean {
  const usual = reading.usual(object);
  if (usual === null) return false;
  const [least, most] = usual['length-mm'];
  const longest = LENGTHS.map((field) => ({ field, ...measured[field] })).toSorted(
    (a, b) => (b.value ?? 0) - (a.value ?? 0),
  )[0];
  if (longest === undefined || longest.value === null || longest.isSettled) return false;
  const { field, value } = longest;
  if (value >= least && value <= most) return false;
  if (open.questions.some((question) => question.field === field)) return true;
  const slips = [value / 10, value * 10].filter((slip) => slip >= least && slip <= most);
  ask(open, field, {
    reason: 'beyond-usual',
    asked: words.beyondUsual(reading.label('object-type', object), value, least, most),
    proposals: [
      proposal(value, field, words.asWritten),
      ...slips.map((slip) => proposal(Number(slip.toPrecision(6)), field, words.tenTimes)),
    ],
    taken: String(value),
    received: longest.written,
  });
  return true;
}

/** Asks about a weight that such a thing of such a size does not have; it stands as written. */
export function doubtMass(
  reading: Reading,
  open: OpenRow,
  object: string,
  material: string,
  boxCm3: number,
  mass: Measured,
): void {
  const factor = reading.vocabulary.objectTypes.find(({ id }) => id === object)?.shapeFactor;
  const density = reading.vocabulary.materials.find(({ id }) => id === material)?.densityGPerCm3;
  if (mass.value === null || mass.isSettled || !factor || !density) return;
  if (open.questions.some(({ field }) => field === 'mass-g')) return;
  const [least, most] = [factor.least * density.value * boxCm3, factor.greatest * density.value * boxCm3];
  const fitsWell = (value: number, slack = 1): boolean =>
    value + 0.05 >= least / slack && value - 0.05 <= most * slack;
  if (fitsWell(mass.value, SLACK)) return;
  const { value } = mass;
  const tens = [value * 10, value / 10]
    .filter((slip) => fitsWell(slip))
    .map((slip) => proposal(Number(slip.toPrecision(6)), 'mass-g', words.tenTimes));
  const kilos = fitsWell(value * UNITS.kg)
    ? [proposal(converted(value, 'kg'), 'mass-g', (label) => words.inUnit(label, 'kg'))]
    : [];
  ask(open, 'mass-g', {
    reason: 'mass-doubtful',
    asked: words.massDoubtful(value, least, most),
    proposals: [
      proposal(value, 'mass-g', words.asWritten),
      ...kilos,
      ...tens,
      { value: '', label: words.leaveOut() },
    ],
    taken: String(value),
    received: mass.written,
  });
}
