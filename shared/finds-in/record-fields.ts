import type { Find } from '../library/library.ts';
import type { Field } from './fields.ts';
import type { RowIn } from './finds-in.ts';

/** The fields of a find beside its number, in the order of a record. */
export const RECORD_FIELDS = [
  'pit',
  'context',
  'object-type',
  'material',
  'count',
  'mass-g',
  'length-mm',
  'width-mm',
  'thickness-mm',
  'state',
  'made-by',
  'used-for',
  'age',
  'role',
  'side',
  'decoration',
  'note',
] as const satisfies readonly Field[];
export type RecordField = (typeof RECORD_FIELDS)[number];
export type RecordValue = string | number | undefined;

/** What a record says in one of its fields; undefined where it says nothing. */
export function valueOf(find: Find, field: RecordField): RecordValue {
  switch (field) {
    case 'pit':
    case 'context':
    case 'count':
    case 'role':
    case 'side':
    case 'decoration':
    case 'note':
      return find[field];
    case 'mass-g':
      return find.massG;
    case 'length-mm':
      return find.lengthMm;
    case 'width-mm':
      return find.widthMm;
    case 'thickness-mm':
      return find.thicknessMm;
    case 'object-type':
    case 'material':
    case 'state':
    case 'made-by':
    case 'used-for':
    case 'age':
      return find.attributes[field];
    default:
      return field satisfies never;
  }
}

/** A field in which a row says otherwise than the record. */
export interface Difference {
  readonly field: RecordField;
  readonly there: RecordValue;
  readonly here: RecordValue;
}

/** Fields a row says something of; what was guessed for it, or has an empty cell, is not said. */
export function saidFields(row: RowIn, find: Find, countColumn: number | null): readonly RecordField[] {
  const isWritten = (field: RecordField): boolean => {
    if (row.guessed[field] !== undefined || valueOf(find, field) === undefined) return false;
    // A record without a count is of one piece.
    return field !== 'count' || find.count !== 1 || (row.cells[countColumn ?? -1] ?? '').trim() !== '';
  };
  return RECORD_FIELDS.filter(isWritten);
}

/** In which of some fields two records differ. */
export const differences = (there: Find, here: Find, fields: readonly RecordField[]): readonly Difference[] =>
  fields
    .map((field) => ({ field, there: valueOf(there, field), here: valueOf(here, field) }))
    .filter((each) => each.there !== each.here);

/**
 * The record with what a row says in the place of what it said, and all else kept. Of another object, what goes with
 * the object is the row's, guessed or not.
 */
export function merged(there: Find, here: Find, fields: readonly RecordField[]): Find {
  const isOther = fields.includes('object-type') && differences(there, here, ['object-type']).length > 0;
  const withObject: readonly RecordField[] = isOther
    ? ['material', 'made-by', 'used-for', 'state', 'age', 'role']
    : [];
  const from = (field: RecordField): Find => ([...fields, ...withObject].includes(field) ? here : there);
  const optional = {
    massG: from('mass-g').massG,
    side: from('side').side,
    decoration: from('decoration').decoration,
    note: from('note').note,
    photo: there.photo,
  };
  const present = Object.fromEntries(
    Object.entries(optional).filter(([, value]) => value !== undefined),
  ) as Partial<Pick<Find, keyof typeof optional>>;
  return {
    id: there.id,
    pit: there.pit,
    smallFind: there.smallFind,
    context: from('context').context,
    attributes: {
      'object-type': from('object-type').attributes['object-type'],
      material: from('material').attributes.material,
      state: from('state').attributes.state,
      'made-by': from('made-by').attributes['made-by'],
      'used-for': from('used-for').attributes['used-for'],
      age: from('age').attributes.age,
    },
    lengthMm: from('length-mm').lengthMm,
    widthMm: from('width-mm').widthMm,
    thicknessMm: from('thickness-mm').thicknessMm,
    count: from('count').count,
    role: from('role').role,
    ...present,
    status: there.status,
  };
}
