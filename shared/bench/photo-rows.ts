import { isMap, isSeq, parseDocument, type Node } from 'yaml';
import { readYaml } from '../lesson/read-yaml.ts';
import { changeData, isSame, type Change } from './change.ts';
import { changeYaml } from './change-yaml.ts';
import { writeValue } from './write-flow.ts';

/** What a site file says of a photograph; the length that its find takes in picture points, null where nobody has said. */
export interface PhotoRow {
  readonly find: string;
  readonly file: string;
  readonly shows: string;
  readonly credit: string;
  readonly lengthPx: number | null;
}

type Mapping = Readonly<Record<string, unknown>>;

const isMapping = (value: unknown): value is Mapping =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

/** The list as it is written; [] where there is none. */
function listIn(yaml: string): readonly unknown[] {
  const { data } = readYaml(yaml);
  const list = isMapping(data) ? data['photos'] : undefined;
  return Array.isArray(list) ? list : [];
}

const rowOf = (given: unknown): PhotoRow | null =>
  isMapping(given) && typeof given['find'] === 'string' && typeof given['file'] === 'string'
    ? {
        find: given['find'],
        file: given['file'],
        shows: textOf(given['shows']),
        credit: textOf(given['credit']),
        lengthPx: typeof given['length-px'] === 'number' ? given['length-px'] : null,
      }
    : null;

/** The rows of `photos:` that name a find and a file. @example photoRows('photos: [{ find: P1-1, file: a.jpg }]').length // 1 */
export const photoRows = (yaml: string): readonly PhotoRow[] =>
  listIn(yaml).flatMap((given) => rowOf(given) ?? []);

const placeOf = (yaml: string, find: string): number =>
  listIn(yaml).findIndex((given) => isMapping(given) && given['find'] === find);

/** A row as it stands in the file, key by key. */
const written = ({
  find,
  file,
  shows,
  credit,
  lengthPx,
}: PhotoRow): Readonly<Record<string, string | number>> => ({
  find,
  file,
  shows,
  credit,
  ...(lengthPx === null ? {} : { 'length-px': lengthPx }),
});

const linesOf = (row: PhotoRow, indent: string): string =>
  Object.entries(written(row))
    .map(([key, value], index) => `${indent}${index === 0 ? '- ' : '  '}${key}: ${writeValue(value)}\n`)
    .join('');

/** The file with a row at the end of its list, on lines of its own; null where its list is written in another way. */
function withLines(yaml: string, row: PhotoRow): string | null {
  const whole = yaml === '' || yaml.endsWith('\n') ? yaml : `${yaml}\n`;
  const document = parseDocument(whole, { strict: true, uniqueKeys: false, prettyErrors: false });
  const root = document.contents;
  if (!isMap(root) || root.flow === true) return null;
  if (!document.has('photos')) return `${whole}photos:\n${linesOf(row, '  ')}`;
  const list = document.get('photos', true) as Node | undefined;
  if (!isSeq(list) || list.flow === true) return null;
  const [first, last] = [list.items[0] as Node | undefined, list.items.at(-1) as Node | undefined];
  if (!first?.range || !last?.range) return null;
  const lead = whole.slice(whole.lastIndexOf('\n', first.range[0] - 1) + 1, first.range[0]);
  const indent = /^( *)- +$/.exec(lead)?.[1];
  if (indent === undefined) return null;
  // A text over several lines ends after its line end.
  const end = whole.indexOf('\n', last.range[1] - 1) + 1;
  return end === 0 ? null : whole.slice(0, end) + linesOf(row, indent) + whole.slice(end);
}

function addRow(yaml: string, row: PhotoRow): string | null {
  const { data, faults } = readYaml(yaml);
  if (faults.length > 0 || !isMapping(data)) return null;
  const insert: Change = { do: 'insert', path: ['photos'], at: listIn(yaml).length, value: written(row) };
  const lines = withLines(yaml, row);
  const isMeant = lines !== null && isSame(readYaml(lines).data, changeData(data, insert));
  if (isMeant) return lines;
  // An empty `photos:` is no list to put into.
  return Array.isArray(data['photos'])
    ? changeYaml(yaml, insert)
    : changeYaml(yaml, { do: 'set', path: ['photos'], value: [written(row)] });
}

/**
 * Writes what is said of a find's photograph into a site file: in the place of what is said of it there, or at the end
 * of the list. All else stays as it stands, comments too.
 *
 * @returns null where the file cannot be read.
 * @example setPhotoRow('id: a\n', { find: 'P1-1', file: 'a-P1-1.jpg', shows: 'a blade', credit: 'A', lengthPx: null })
 */
export function setPhotoRow(yaml: string, row: PhotoRow): string | null {
  const place = placeOf(yaml, row.find);
  if (place < 0) return addRow(yaml, row);
  const change = (text: string | null, next: Change): string | null =>
    text === null ? null : changeYaml(text, next);
  const at = (key: string): readonly (string | number)[] => ['photos', place, key];
  const before = listIn(yaml)[place];
  const old = isMapping(before) ? before : {};
  let text: string | null = yaml;
  for (const [key, value] of Object.entries(written(row)))
    if (old[key] !== value) text = change(text, { do: 'set', path: at(key), value });
  return row.lengthPx === null && 'length-px' in old
    ? change(text, { do: 'remove', path: at('length-px') })
    : text;
}

/** A site file without what it says of a find's photograph; null where it says nothing, or cannot be read. */
export function removePhotoRow(yaml: string, find: string): string | null {
  const place = placeOf(yaml, find);
  if (place < 0) return null;
  const path = listIn(yaml).length === 1 ? ['photos'] : ['photos', place];
  return changeYaml(yaml, { do: 'remove', path });
}
