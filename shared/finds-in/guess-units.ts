import type { TableRow } from './cut-table.ts';
import { LENGTHS, UNITS, type Field, type Unit } from './fields.ts';
import type { ColumnGuess } from './guess-columns.ts';
import { readNumber } from './read-number.ts';
import type { Reading } from './reading.ts';

const SAMPLE = 200;
/** A unit that no header names is taken from the values where it fits this many times as many rows as the usual one. ASM. */
const BETTER = 1.5;

/** How many rows of a sample have a value that is usual for their object, in each of some units. */
function shares(
  rows: readonly TableRow[],
  reading: Reading,
  units: readonly Unit[],
  value: (row: TableRow) => number | null,
  range: (type: string) => readonly [number, number] | null,
  object: number,
): ReadonlyMap<Unit, number> {
  const hits = new Map<Unit, number>(units.map((unit) => [unit, 0]));
  for (const row of rows.slice(0, SAMPLE)) {
    const type = reading.lookUps['object-type'](row.cells[object] ?? '').ids[0];
    const usual = type === undefined ? null : range(type);
    const written = value(row);
    if (usual === null || written === null) continue;
    for (const unit of units) {
      const size = written * UNITS[unit];
      if (size >= usual[0] && size <= usual[1]) hits.set(unit, (hits.get(unit) ?? 0) + 1);
    }
  }
  return hits;
}

function pickUnit(hits: ReadonlyMap<Unit, number>, usual: Unit): Unit {
  let best = usual;
  for (const [unit, count] of hits) {
    if (count > (hits.get(best) ?? 0) && count >= BETTER * (hits.get(usual) ?? 0)) best = unit;
  }
  return best;
}

/**
 * Where no header names a unit, tells it from the values: a column of flakes 4 to 6 long is in centimetres.
 * Weights are held against what a box of the usual size would weigh, within a factor of ten.
 */
export function guessUnits(
  columns: readonly ColumnGuess[],
  body: readonly TableRow[],
  reading: Reading,
  usesComma: boolean,
): readonly ColumnGuess[] {
  const indexOf = (field: Field): number | undefined => columns.find(({ guess }) => guess === field)?.index;
  const object = indexOf('object-type');
  if (object === undefined) return columns;
  const numberIn = (row: TableRow, index: number | undefined): number | null => {
    const read = index === undefined ? null : readNumber(row.cells[index] ?? '', usesComma);
    return read?.kind === 'number' && read.unit === null ? read.value : null;
  };
  const lengths = LENGTHS.map(indexOf);
  const longest = (row: TableRow): number | null => {
    const values = lengths.flatMap((index) => numberIn(row, index) ?? []);
    return values.length === 0 ? null : Math.max(...values);
  };
  const mass = (row: TableRow): number | null => numberIn(row, indexOf('mass-g'));
  const massRange = (type: string): readonly [number, number] | null => {
    const usual = reading.usual(type);
    const density = reading.vocabulary.materials.find(({ id }) => id === usual?.materials[0])?.densityGPerCm3;
    if (usual === null || !density) return null;
    const [length, width, thickness] = usual['size-mm'];
    const typicalG = (length * width * thickness * density.value) / 2000;
    return [typicalG / 10, typicalG * 10];
  };
  const lengthUnit = pickUnit(
    shares(
      body,
      reading,
      ['mm', 'cm', 'm'],
      longest,
      (type) => reading.usual(type)?.['length-mm'] ?? null,
      object,
    ),
    'mm',
  );
  const massUnit = pickUnit(shares(body, reading, ['g', 'kg'], mass, massRange, object), 'g');
  return columns.map((column): ColumnGuess => {
    if (column.unitFrom !== 'usual' || column.guess === 'dimensions') return column;
    const unit = column.guess === 'mass-g' ? massUnit : lengthUnit;
    return unit === column.unit ? column : { ...column, unit, unitFrom: 'values' };
  });
}
