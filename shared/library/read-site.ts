import * as z from 'zod';
import { nearest } from '../lesson/nearest.ts';
import type { Fault, Problem } from '../lesson/problem.ts';
import { findWords } from '../words/en/library-problems.ts';
import { makeFind } from './find-row.ts';
import { ROLES, STATES, type Find, type Pit, type Site, type Vocabulary } from './library.ts';
import { photoRow, readPhotos, type PhotoFiles } from './read-photos.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { readFindsTable } from './read-finds-table.ts';
import { STATUSES } from './status.ts';

const millimetres = z.number().positive().max(100_000);

const findRow = z.strictObject({
  'small-find': z.int().positive(),
  context: z.int().positive(),
  'object-type': z.string(),
  material: z.string(),
  'length-mm': millimetres,
  'width-mm': millimetres,
  'thickness-mm': millimetres,
  'mass-g': z.number().positive().optional(),
  count: z.int().positive().optional(),
  state: z.enum(STATES),
  'made-by': z.string(),
  'used-for': z.string(),
  age: z.string(),
  role: z.enum(ROLES),
  side: z.enum(['left', 'right']).optional(),
  decoration: z.string().optional(),
  note: z.string().optional(),
});

/** A site file as a lead writes it. */
export const siteFile = z.strictObject({
  id: z.string().regex(/^[a-z][a-z0-9-]*$/, 'small letters, digits and hyphens'),
  name: z.string(),
  code: z.string(),
  status: z.enum(STATUSES),
  story: z.string(),
  organisation: z.string(),
  period: z.strictObject({
    label: z.string(),
    'from-bce': z.int(),
    'to-bce': z.int(),
    status: z.enum(STATUSES),
    note: z.string(),
  }),
  soils: z.string(),
  pits: z.array(
    z.strictObject({
      id: z.string().regex(/^[A-Za-z][A-Za-z0-9]*$/, 'a letter, then letters and digits'),
      cut: z.int().positive(),
      centre: z.strictObject({ 'east-m': z.number(), 'north-m': z.number() }),
      'top-level-m-od': z.number(),
      'length-mm': millimetres,
      'width-mm': millimetres,
      'depth-mm': millimetres,
      profile: z.enum(['bowl', 'steep-sided']),
      fills: z.array(
        z.strictObject({ context: z.int().positive(), description: z.string(), 'thickness-mm': millimetres }),
      ),
      finds: z.array(findRow).optional(),
    }),
  ),
  photos: z.array(photoRow).optional(),
});

/** A finds table that goes with a site, as text. */
export interface TableText {
  readonly file: string;
  readonly text: string;
}

/**
 * Reads a site: its pits, its finds from the file itself and from any finds tables beside it, and their photographs.
 */
export function readSite(
  file: string,
  text: string,
  tables: readonly TableText[],
  vocabulary: Vocabulary,
  files: PhotoFiles = new Map(),
): ReadFile<Site> {
  const read = readYamlFile(file, text, siteFile);
  if (read.value === null) return { ...read, value: null };
  const raw = read.value;
  const faults: Fault[] = [];
  const problems: Problem[] = [];
  const finds: Find[] = [];
  const take = (
    find: Find,
    fault: (code: Fault['code'], key: string, words: Omit<Fault, 'code' | 'grade' | 'path'>) => void,
  ): void => {
    const pit = raw.pits.find(({ id }) => id === find.pit);
    const pitIds = raw.pits.map(({ id }) => id);
    if (pit === undefined)
      fault('find-unknown', 'pit', findWords.pitUnknown(find.pit, nearest(find.pit, pitIds), pitIds));
    else if (!pit.fills.some(({ context }) => context === find.context)) {
      const contexts = pit.fills.map(({ context }) => String(context));
      fault('find-unknown', 'context', findWords.contextUnknown(find.context, find.pit, contexts));
    } else if (finds.some(({ id }) => id === find.id))
      fault('find-repeated', 'small-find', findWords.findRepeated(find.id));
    else finds.push(find);
  };
  for (const [pitIndex, pit] of raw.pits.entries()) {
    for (const [findIndex, row] of (pit.finds ?? []).entries()) {
      const base = ['pits', pitIndex, 'finds', findIndex];
      const made = makeFind(pit.id, row, vocabulary, raw.status);
      faults.push(...made.faults.map((fault) => ({ ...fault, path: [...base, ...fault.path] })));
      if (made.find !== null) {
        take(made.find, (code, key, words) =>
          faults.push({ code, grade: 'error', path: [...base, key], ...words }),
        );
      }
    }
  }
  for (const table of tables) {
    const read = readFindsTable(table.file, table.text, vocabulary, raw.status);
    problems.push(...read.problems);
    for (const row of read.rows)
      take(row.find, (code, key, words) => problems.push(row.problem(code, key, words)));
  }
  const photographed = readPhotos(
    raw.photos ?? [],
    files,
    finds.map(({ id }) => id),
  );
  faults.push(...photographed.faults);
  const withPhoto = (find: Find): Find => {
    const photo = photographed.photos.get(find.id);
    return photo === undefined ? find : { ...find, photo };
  };
  const pits = raw.pits.map((pit): Pit => ({
    id: pit.id,
    cut: pit.cut,
    centre: { eastM: pit.centre['east-m'], northM: pit.centre['north-m'] },
    topLevelMOd: pit['top-level-m-od'],
    lengthMm: pit['length-mm'],
    widthMm: pit['width-mm'],
    depthMm: pit['depth-mm'],
    profile: pit.profile,
    fills: pit.fills.map((fill) => ({
      context: fill.context,
      description: fill.description,
      thicknessMm: fill['thickness-mm'],
    })),
    finds: finds.filter((find) => find.pit === pit.id).map(withPhoto),
  }));
  const site: Site = {
    id: raw.id,
    name: raw.name,
    code: raw.code,
    status: raw.status,
    story: raw.story,
    organisation: raw.organisation,
    period: {
      label: raw.period.label,
      fromBce: raw.period['from-bce'],
      toBce: raw.period['to-bce'],
      status: raw.period.status,
      note: raw.period.note,
    },
    soils: raw.soils,
    pits,
  };
  return { ...read, value: site, problems: [...read.place(faults), ...problems] };
}
