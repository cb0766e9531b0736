/** What a column of a finds list can hold: the keys of a find, three measures in one cell, and names of people. */
export const FIELDS = [
  'pit',
  'small-find',
  'context',
  'object-type',
  'material',
  'count',
  'mass-g',
  'length-mm',
  'width-mm',
  'thickness-mm',
  'dimensions',
  'state',
  'made-by',
  'used-for',
  'age',
  'role',
  'side',
  'decoration',
  'note',
  'person',
] as const;
export type Field = (typeof FIELDS)[number];

export const LENGTHS = ['length-mm', 'width-mm', 'thickness-mm'] as const;
export type LengthField = (typeof LENGTHS)[number];

/** Fields that hold a number. */
export const isNumeric = (field: Field | null): boolean =>
  field !== null &&
  ['small-find', 'context', 'count', 'mass-g', 'length-mm', 'width-mm', 'thickness-mm'].includes(field);

/** How many millimetres or grams each unit is; an inch is 25.4 mm by definition. */
export const UNITS = { mm: 1, cm: 10, m: 1000, in: 25.4, g: 1, kg: 1000, mg: 0.001 } as const;
export type Unit = keyof typeof UNITS;

const MASS_UNITS: readonly Unit[] = ['g', 'kg', 'mg'];

export const isUnit = (word: string): word is Unit => Object.hasOwn(UNITS, word);

/** True where a unit can measure a field. @example fits('kg', 'mass-g') // true */
export const fits = (unit: Unit, field: Field): boolean => {
  const isMass = MASS_UNITS.includes(unit);
  if (field === 'mass-g') return isMass;
  return !isMass && (field === 'dimensions' || LENGTHS.some((length) => length === field));
};

/** The unit the product keeps a field in; null for what is not measured. */
export const ownUnit = (field: Field): Unit | null =>
  field === 'mass-g'
    ? 'g'
    : field === 'dimensions' || LENGTHS.some((length) => length === field)
      ? 'mm'
      : null;

/** A value in the product's unit, to six digits so that 4.6 cm is 46 mm and not a hair more. */
export const converted = (value: number, unit: Unit): number => Number((value * UNITS[unit]).toPrecision(6));
