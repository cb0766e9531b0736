import * as fc from 'fast-check';
import { slug } from '../../../shared/library/slug.ts';
import type { CarriedVisit } from '../../../shared/visit-folder/index.ts';
import { PICTURE } from '../../content/zips/gravel-end.ts';

/** The same picture with a table of its own in it, so that its bytes differ and it stays a picture. */
function pictureWith(mark: number): Uint8Array {
  const bytes = PICTURE.slice();
  // A value of the first table of a JPEG: how coarsely it is kept.
  const at = bytes.findIndex((byte, index) => byte === 0xff && bytes[index + 1] === 0xdb) + 10;
  bytes[at] = 1 + mark;
  return bytes;
}

const siteIds = fc.constantFrom('gravel-end', 'mill-field', 'long-acre');
const line = fc.string({ unit: 'grapheme', maxLength: 30 }).map((text) => text.replaceAll(/[\r\n\0]/g, ' '));

/** The files of a site: a few ids, a few texts, so that two visits often carry the same and often do not. */
const anySite = fc
  .record({
    id: siteIds,
    story: fc.oneof(fc.constantFrom('Invented.', 'Invented too.'), line),
    rows: fc.option(fc.nat(2)),
    pictures: fc.uniqueArray(
      fc.record({
        name: fc.constantFrom('jaw.jpg', 'axe-1.png', 'pin.JPG'),
        mark: fc.nat(1),
        isThere: fc.boolean(),
      }),
      { selector: ({ name }) => name, maxLength: 2 },
    ),
  })
  .map(({ id, story, rows, pictures }) => ({
    id,
    files: [
      ...(rows === null
        ? []
        : [
            {
              path: `sites/${id}.finds.csv`,
              file: `${id}.finds.csv`,
              text: `pit,small find\n${Array.from({ length: rows }, (_, row) => `P1,${row}\n`).join('')}`,
            },
          ]),
      {
        path: `sites/${id}.yaml`,
        file: `${id}.yaml`,
        text: `id: ${id}\nstory: ${JSON.stringify(story)}\npits: []\nphotos:\n${pictures
          .map(({ name }) => `  - { find: P1-1, file: ${name} }\n`)
          .join('')}`,
      },
    ],
    photos: pictures
      .filter(({ isThere }) => isThere)
      .map(({ name, mark }) => [name, pictureWith(mark)] as const),
  }));

const anyName = fc
  .oneof(
    fc.constantFrom('pit', 'a-visit', 'hügel-und-moor', '土器'),
    fc.string({ unit: 'grapheme', maxLength: 40 }),
  )
  .map((name) => slug(name.normalize('NFC')))
  .filter((name) => name !== '' && slug(name) === name);

/** A visit as the Bench keeps them: its lesson names a site that it carries, another, or none. */
export const anyVisit: fc.Arbitrary<CarriedVisit> = fc
  .record({
    name: anyName,
    names: fc.option(siteIds),
    prose: fc.array(line, { maxLength: 4 }),
    sites: fc.uniqueArray(anySite, { selector: ({ id }) => id, maxLength: 2 }),
  })
  .map(({ name, names, prose, sites }) => ({
    name,
    text: ['---', 'title: A visit', ...(names === null ? [] : [`site: ${names}`]), '---', ...prose, ''].join(
      '\n',
    ),
    files: sites.flatMap(({ files }) => files).toSorted((a, b) => (a.path < b.path ? -1 : 1)),
    photos: new Map(sites.flatMap(({ photos }) => photos)),
  }));

/** A visit as plain data that can be told apart and put in order. */
export const plainly = ({ name, text, files, photos }: CarriedVisit): unknown => ({
  name,
  text,
  files: files.map(({ path, file, text: own }) => ({ path, file, text: own })),
  photos: [...photos].map(([photo, bytes]) => `${photo} ${Buffer.from(bytes).toString('base64')}`).toSorted(),
});

/** Visits in an order that is theirs alone. */
export const inOrder = (visits: readonly CarriedVisit[]): readonly string[] =>
  visits.map((visit) => JSON.stringify(plainly(visit))).toSorted();
