import type { FindRow } from '../library/find-row.ts';
import { ROLES, STATES } from '../library/library.ts';
import { findsInWords as words } from '../words/en/finds-in.ts';
import { LENGTHS, type LengthField, type Unit } from './fields.ts';
import { isFormula, readNumber } from './read-number.ts';
import { answered, ask, type OpenRow, type Reading } from './reading.ts';
import {
  doubtMass,
  doubtSize,
  fillMeasure,
  readMeasure,
  splitDimensions,
  type Measured,
} from './row-measures.ts';
import { readContext, readPit, readSmallFind } from './row-names.ts';
import { piecesInNote, readNote } from './row-note.ts';
import { readObject, readRowWords, readSide } from './row-words.ts';

/** A row as far as it can be read alone: numbers and pits are settled once all rows are. */
export interface RowRead {
  readonly open: OpenRow;
  /** Undefined: no column says; null: it cannot be read. */
  readonly pit: string | null | undefined;
  readonly context: number | null;
  readonly smallFind: number | null;
  /** True where the lead has given the number. */
  readonly isNumberSettled: boolean;
  /** Null where an answer is waited for. */
  readonly found: Omit<FindRow, 'small-find' | 'context'> | null;
}

/** The text and unit each measure is read from: its own column's, or its part of a cell of three. */
function sourceOf(
  open: OpenRow,
  field: LengthField | 'mass-g',
): { readonly written: string; readonly unit: Unit | null } {
  const own = open.columnOf(field);
  if (own !== null) return { written: open.textOf(field), unit: own.unit };
  const place = LENGTHS.findIndex((length) => length === field);
  const all = open.columnOf('dimensions');
  if (place === -1 || all === null) return { written: '', unit: null };
  return { written: splitDimensions(open.textOf('dimensions'))[place] ?? '', unit: all.unit };
}

function readCount(reading: Reading, open: OpenRow, note: string): number | undefined {
  const written = open.textOf('count');
  const given = answered(reading, open, 'count');
  if (given === '') return undefined;
  if (given !== undefined && /^[1-9]\d{0,4}$/.test(given)) return Number(given);
  const said = piecesInNote(note);
  const proposal = (count: number): { value: string; label: string } => ({
    value: String(count),
    label: String(count),
  });
  const leave = { value: '', label: words.leaveOut() };
  if (written === '' || reading.isNotRecorded(written)) return said ?? undefined;
  const read = isFormula(written) ? null : readNumber(written, false);
  const value = read?.kind === 'number' ? read.value : null;
  if (value === null || !Number.isInteger(value) || value < 1 || value > 99_999) {
    const asked = isFormula(written) ? words.formula('count', written) : words.notNumber('count', written);
    ask(open, 'count', {
      reason: isFormula(written) ? 'formula' : 'not-a-number',
      asked,
      proposals: [proposal(1), leave],
      taken: '',
    });
    return undefined;
  }
  if (said !== null && said !== value) {
    const asked = words.countUnclear(written, open.textOf('note'));
    ask(open, 'count', {
      reason: 'count-unclear',
      asked,
      proposals: [proposal(value), proposal(said)],
      taken: String(value),
    });
  } else if (read?.kind === 'number' && read.isRough) {
    ask(open, 'count', {
      reason: 'rough',
      asked: words.rough('count', written),
      proposals: [proposal(value)],
      taken: String(value),
    });
  }
  return value;
}

/** Lengths of a row: as written, or filled where they are missing; null where one can neither be read nor filled. */
function readLengths(
  reading: Reading,
  open: OpenRow,
  object: string,
  material: string | null,
  measured: Readonly<Record<LengthField, Measured>>,
  mass: Measured,
): Readonly<Record<LengthField, number>> | null {
  const known: Partial<Record<LengthField, number>> = {};
  for (const field of LENGTHS) {
    const { value } = measured[field];
    if (value !== null) known[field] = value;
  }
  const written = { ...known };
  for (const field of LENGTHS) {
    if (known[field] !== undefined) continue;
    const fill = fillMeasure(reading, object, material, field, written, mass.value);
    const { lack, written: text } = measured[field];
    const hasColumn = open.columnOf(field) !== null || open.columnOf('dimensions') !== null;
    if (fill === null) {
      ask(open, field, {
        reason: lack?.reason ?? 'not-recorded',
        asked: lack?.asked ?? words.notRecorded(field, text),
        proposals: [],
        taken: null,
        received: text,
      });
      continue;
    }
    known[field] = fill.valueMm;
    open.guessed.set(field, fill.isFromWeight ? words.byWeight() : words.bySize());
    const shown = words.measured(fill.valueMm, field);
    const label = fill.isFromWeight ? words.workedOut(shown) : words.usualSize(shown);
    const asked = lack?.asked ?? words.notRecorded(field, text);
    // A list without such a column is told of once, not asked at every row.
    if (hasColumn) {
      ask(open, field, {
        reason: lack?.reason ?? 'not-recorded',
        asked,
        proposals: [{ value: String(fill.valueMm), label }],
        taken: String(fill.valueMm),
        received: text,
      });
    }
  }
  const { 'length-mm': length, 'width-mm': width, 'thickness-mm': thickness } = known;
  if (length === undefined || width === undefined || thickness === undefined) return null;
  return { 'length-mm': length, 'width-mm': width, 'thickness-mm': thickness };
}

function readFound(reading: Reading, open: OpenRow, usesComma: boolean): RowRead['found'] {
  const object = readObject(reading, open);
  const note = readNote(reading, open);
  const measured = {
    'length-mm': readMeasure(reading, open, 'length-mm', sourceOf(open, 'length-mm'), usesComma),
    'width-mm': readMeasure(reading, open, 'width-mm', sourceOf(open, 'width-mm'), usesComma),
    'thickness-mm': readMeasure(reading, open, 'thickness-mm', sourceOf(open, 'thickness-mm'), usesComma),
  };
  const mass = readMeasure(reading, open, 'mass-g', sourceOf(open, 'mass-g'), usesComma);
  if (mass.lack !== null) {
    const leave = { value: '', label: words.leaveOut() };
    ask(open, 'mass-g', { ...mass.lack, proposals: [leave], taken: '', received: mass.written });
  }
  const count = readCount(reading, open, open.textOf('note'));
  const side = readSide(reading, open);
  if (object === null) return null;
  const rest = readRowWords(reading, open, object);
  const lengths = readLengths(reading, open, object, rest?.material ?? null, measured, mass);
  const isSizeOdd = doubtSize(reading, open, object, measured);
  if (rest === null || lengths === null) return null;
  const isMeasured = LENGTHS.every((field) => measured[field].value !== null);
  if (isMeasured && !isSizeOdd) {
    const boxCm3 =
      (lengths['length-mm'] * lengths['width-mm'] * lengths['thickness-mm'] * (count ?? 1)) / 1000;
    doubtMass(reading, open, object, rest.material, boxCm3, mass);
  }
  const decoration = open.textOf('decoration').replace(/^[\s=+@-]+/, '');
  return {
    'object-type': object,
    material: rest.material,
    ...lengths,
    'mass-g': mass.value ?? undefined,
    count,
    state: STATES.find((state) => state === rest.state) ?? 'whole',
    'made-by': rest.madeBy,
    'used-for': rest.usedFor,
    age: rest.age,
    role: ROLES.find((role) => role === rest.role) ?? 'evidence',
    side: side === 'left' || side === 'right' ? side : undefined,
    decoration: decoration === '' || reading.isNotRecorded(decoration) ? undefined : decoration,
    note: note === '' ? undefined : note,
  };
}

/** Reads one row, asking about each cell that needs it. */
export function readRow(reading: Reading, open: OpenRow, above: number | null, usesComma: boolean): RowRead {
  const { number, isSettled } = readSmallFind(reading, open);
  const pit = readPit(reading, open);
  const hasContext = open.columnOf('context') !== null || answered(reading, open, 'context') !== undefined;
  const context = hasContext ? readContext(reading, open, above) : null;
  return {
    open,
    pit,
    context,
    smallFind: number,
    isNumberSettled: isSettled,
    found: readFound(reading, open, usesComma),
  };
}
