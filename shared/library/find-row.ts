import { nearest } from '../lesson/nearest.ts';
import type { Fault } from '../lesson/problem.ts';
import { findWords } from '../words/en/library-problems.ts';
import type { Attribute, Find, Vocabulary } from './library.ts';
import { slug } from './slug.ts';
import type { Status } from './status.ts';

/** The keys of a find in a site file; a table's columns are the same words with spaces. */
export interface FindRow {
  readonly 'small-find': number;
  readonly context: number;
  readonly 'object-type': string;
  readonly material: string;
  readonly 'length-mm': number;
  readonly 'width-mm': number;
  readonly 'thickness-mm': number;
  readonly 'mass-g'?: number | undefined;
  readonly count?: number | undefined;
  readonly state: Find['attributes']['state'];
  readonly 'made-by': string;
  readonly 'used-for': string;
  readonly age: string;
  readonly role: Find['role'];
  readonly side?: 'left' | 'right' | undefined;
  readonly decoration?: string | undefined;
  readonly note?: string | undefined;
}

const present = <Key extends string, Value>(
  key: Key,
  value: Value | undefined,
): { readonly [K in Key]?: Value } =>
  // The computed key is the one named in the type.
  (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value };

/** Outside what such a thing can weigh for its size, one of its numbers is likely a slip of the pen. */
function massFault(row: FindRow, vocabulary: Vocabulary): Fault | null {
  const massG = row['mass-g'];
  const factor = vocabulary.objectTypes.find(({ id }) => id === slug(row['object-type']))?.shapeFactor;
  const density = vocabulary.materials.find(({ id }) => id === slug(row.material))?.densityGPerCm3;
  if (massG === undefined || !factor || !density) return null;
  const boxCm3 = (row['length-mm'] * row['width-mm'] * row['thickness-mm'] * (row.count ?? 1)) / 1000;
  const leastG = factor.least * density.value * boxCm3;
  const greatestG = factor.greatest * density.value * boxCm3;
  // A mass written to the nearest tenth may be out by half of one.
  if (massG + 0.05 >= leastG && massG - 0.05 <= greatestG) return null;
  return {
    code: 'mass-doubtful',
    grade: 'caution',
    path: ['mass-g'],
    ...findWords.massDoubtful(massG, leastG, greatestG),
  };
}

/** One row of a record as a find, its words matched to the vocabulary; or the faults that stand in the way. */
export function makeFind(
  pit: string,
  row: FindRow,
  vocabulary: Vocabulary,
  status: Status,
): { readonly find: Find | null; readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const attribute = (id: Attribute): string => {
    const written = slug(row[id]);
    const known = vocabulary.attributes.find((words) => words.id === id)?.values ?? [];
    if (known.some((term) => term.id === written)) return written;
    const byLabel = known.find((term) => slug(term.label) === written);
    if (byLabel !== undefined) return byLabel.id;
    const words = known.map((term) => term.id);
    const near = nearest(row[id], words);
    const replacement = near === null ? {} : { replacement: near };
    faults.push({
      code: 'word-unknown',
      grade: 'error',
      path: [id],
      ...findWords.wordUnknown(id, row[id], near, words),
      ...replacement,
    });
    return written;
  };
  const attributes = {
    material: attribute('material'),
    'made-by': attribute('made-by'),
    'used-for': attribute('used-for'),
    age: attribute('age'),
    state: attribute('state'),
    'object-type': attribute('object-type'),
  };
  if (faults.length > 0) return { find: null, faults };
  const mass = massFault(row, vocabulary);
  const find: Find = {
    id: `${pit}-${row['small-find']}`,
    pit,
    smallFind: row['small-find'],
    context: row.context,
    attributes,
    lengthMm: row['length-mm'],
    widthMm: row['width-mm'],
    thicknessMm: row['thickness-mm'],
    ...present('massG', row['mass-g']),
    count: row.count ?? 1,
    role: row.role,
    ...present('side', row.side),
    ...present('decoration', row.decoration),
    ...present('note', row.note),
    status,
  };
  return { find, faults: mass === null ? [] : [mass] };
}
