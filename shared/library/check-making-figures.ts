import { nearest } from '../lesson/nearest.ts';
import type { Fault, Path } from '../lesson/problem.ts';
import { CHOICES, COEFFICIENT_IDS, SPREAD_IDS } from '../making/index.ts';
import { makingWords } from '../words/en/making.ts';
import { MEASURE_KEYS, type MakingFiguresFile } from './making-figures-schema.ts';

interface Ends {
  readonly low: number | null;
  readonly middle: number;
  readonly high: number | null;
}

/** Everything in the file that has ends, sources or an id, with its path. */
function* walk(
  value: unknown,
  path: Path,
): Generator<{ readonly value: Readonly<Record<string, unknown>>; readonly path: Path }> {
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) yield* walk(item, [...path, index]);
  } else if (typeof value === 'object' && value !== null) {
    // An object that is no list has text keys only.
    const record = value as Readonly<Record<string, unknown>>;
    yield { value: record, path };
    for (const [key, item] of Object.entries(record)) yield* walk(item, [...path, key]);
  }
}

const hasEnds = (
  value: Readonly<Record<string, unknown>>,
): value is Readonly<Record<string, unknown>> & Ends =>
  'middle' in value && 'low' in value && 'high' in value;

const rises = ({ low, middle, high }: Ends): boolean =>
  (low ?? middle) <= middle && middle <= (high ?? middle);

const TABLES = {
  form: 'forms',
  stone: 'stones',
  grinder: 'grinders',
  preform: 'preforms',
  extent: 'extents',
  finish: 'finishes',
  skill: 'skills',
  wood: 'woods',
  axe: 'axes',
} as const;

/** What the shape alone cannot tell: ids twice or missing, sources and defaults that are not there, ends the wrong way round. */
export function checkMakingFigures(file: MakingFiguresFile): Fault[] {
  const faults: Fault[] = [];
  for (const [name, list] of Object.entries(file)) {
    if (!Array.isArray(list)) continue;
    const rows: readonly { readonly id: string }[] = list;
    rows.forEach(({ id }, index) => {
      if (rows.findIndex((row) => row.id === id) < index) {
        faults.push({
          code: 'key-repeated',
          grade: 'error',
          path: [name, index, 'id'],
          ...makingWords.idTwice(id, name),
        });
      }
    });
  }
  const sourceIds = file.sources.map(({ id }) => id);
  for (const { value, path } of walk(file, [])) {
    const { sources } = value;
    if (Array.isArray(sources) && path.length > 0) {
      sources.forEach((source: unknown, index) => {
        if (typeof source !== 'string' || sourceIds.includes(source)) return;
        const near = nearest(source, sourceIds);
        faults.push({
          code: 'source-unknown',
          grade: 'error',
          path: [...path, 'sources', index],
          ...makingWords.sourceUnknown(source, near, sourceIds.length),
          ...(near === null ? {} : { replacement: near }),
        });
      });
    }
    if (hasEnds(value) && !rises(value)) {
      const { low, middle, high } = value;
      faults.push({
        code: 'value-unfit',
        grade: 'error',
        path: [...path, 'middle'],
        ...makingWords.endsFall(low, middle, high),
      });
    }
  }
  for (const choice of CHOICES) {
    const table = TABLES[choice];
    const rows: readonly { readonly id: string }[] = file[table];
    const known = rows.map(({ id }) => id);
    const written = file.defaults[choice];
    if (known.includes(written)) continue;
    faults.push({
      code: 'word-unknown',
      grade: 'error',
      path: ['defaults', choice],
      ...makingWords.defaultUnknown(written, table, known),
    });
  }
  const needed = [
    ['coefficients', COEFFICIENT_IDS],
    ['spreads', SPREAD_IDS],
    ['limits', MEASURE_KEYS],
  ] as const;
  for (const [list, ids] of needed) {
    const present: readonly string[] = file[list].map(({ id }) => id);
    for (const id of ids) {
      if (present.includes(id)) continue;
      faults.push({
        code: 'key-missing',
        grade: 'error',
        path: [list],
        ...makingWords.figureMissing(id, list),
      });
    }
  }
  return faults;
}
