import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  addSite,
  carryPhotos,
  NO_FILES,
  ownPhotos,
  photosWeight,
  putPhoto,
  siteFileOf,
  siteOf,
  takeOutPhoto,
  type OwnFiles,
  type PhotoToPut,
} from '../../../shared/bench/index.ts';
import { readSite, type ContentFile } from '../../../shared/library/index.ts';
import { MOST_PHOTO_BYTES, MOST_PHOTOS_BYTES } from '../../../shared/photo/index.ts';
import { demoLibrary, home } from '../../demo.ts';

const file = (path: string, text: string): ContentFile => ({ path, file: `content/${path}`, text });
const read = (path: string): ContentFile => file(path, readFileSync(join(home, 'content', path), 'utf8'));

const CONTENT = [
  read('sites/wendle-marsh.yaml'),
  read('sites/wendle-marsh.finds.csv'),
  file('sites/gravel-end.yaml', 'id: gravel-end\n'),
  file('sites/wendle-marsh-two.yaml', 'id: wendle-two\nphotos:\n  - { find: P1-1, file: two.jpg }\n'),
  file('sites/wendle-marsh-two.finds.csv', 'pit\n'),
  file('bands.yaml', 'id: wendle-two\n'),
];

let blue = new Uint8Array();
let red = new Uint8Array();

beforeAll(async () => {
  const picture = async (background: string): Promise<Uint8Array<ArrayBuffer>> =>
    new Uint8Array(
      await sharp({ create: { width: 80, height: 60, channels: 3, background } })
        .jpeg()
        .toBuffer(),
    );
  blue = await picture('#126');
  red = await picture('#621');
});

const photo = (part: Partial<PhotoToPut> = {}): PhotoToPut => ({
  site: 'wendle-marsh',
  find: 'P3-124',
  shows: 'a grey leaf',
  credit: 'Invented',
  lengthPx: 60,
  bytes: blue,
  from: null,
  ...part,
});

const marsh = (): OwnFiles => siteOf(CONTENT, new Map(), 'wendle-marsh') ?? NO_FILES;

function put(own: OwnFiles, ...photos: readonly PhotoToPut[]): OwnFiles {
  let now = own;
  for (const each of photos) {
    const result = putPhoto(now, each);
    if (result.own === null) throw new Error(result.fault);
    now = result.own;
  }
  return now;
}

const yamlOf = ({ files }: OwnFiles): string => siteFileOf(files, 'wendle-marsh')?.text ?? '';

describe('a site becomes the lead’s own', () => {
  test('with its file, its tables and the photographs it names, and nothing of another', () => {
    expect(marsh().files.map(({ path }) => path)).toEqual([
      'sites/wendle-marsh.yaml',
      'sites/wendle-marsh.finds.csv',
    ]);
    expect(marsh().files.map(({ file }) => file)).toEqual(['wendle-marsh.yaml', 'wendle-marsh.finds.csv']);
    const two = siteOf(
      CONTENT,
      new Map([
        ['two.jpg', blue],
        ['three.jpg', red],
      ]),
      'wendle-two',
    );
    expect(two?.files.map(({ path }) => path)).toEqual([
      'sites/wendle-marsh-two.yaml',
      'sites/wendle-marsh-two.finds.csv',
    ]);
    expect([...(two?.photos.keys() ?? [])]).toEqual(['two.jpg']);
    expect(siteOf(CONTENT, new Map(), 'nowhere')).toBeNull();
  });

  test('and what is their own already stays as it is', () => {
    const mine = { ...NO_FILES, files: [file('sites/wendle-marsh.finds.csv', 'mine')] };
    const both = addSite(mine, marsh());
    expect(both.files.map(({ path, text }) => [path, text.length])).toEqual([
      ['sites/wendle-marsh.finds.csv', 4],
      ['sites/wendle-marsh.yaml', yamlOf(marsh()).length],
    ]);
  });
});

describe('a photograph', () => {
  test('is put in by its site and find, and the library reads it with its scale bar', () => {
    const own = put(marsh(), photo());
    expect([...own.photos.keys()]).toEqual(['wendle-marsh-P3-124.jpg']);
    expect(ownPhotos(own)).toEqual([
      {
        site: 'wendle-marsh',
        find: 'P3-124',
        file: 'wendle-marsh-P3-124.jpg',
        shows: 'a grey leaf',
        credit: 'Invented',
        lengthPx: 60,
        bytes: blue,
      },
    ]);
    const [site, table] = own.files;
    const { value, problems } = readSite(
      'wendle-marsh.yaml',
      site?.text ?? '',
      table === undefined ? [] : [table],
      demoLibrary.vocabulary,
      own.photos,
    );
    expect(problems).toEqual([]);
    const find = value?.pits.flatMap(({ finds }) => finds).find(({ id }) => id === 'P3-124');
    expect(find?.photo).toMatchObject({ widthPx: 80, heightPx: 60, lengthPx: 60, credit: 'Invented' });
    expect(yamlOf(own).startsWith(yamlOf(marsh()))).toBe(true);
  });

  test('takes the place of the one its find has, file and row', () => {
    const own = put(marsh(), photo(), photo({ bytes: red, shows: 'a red leaf', lengthPx: null }));
    expect([...own.photos]).toEqual([['wendle-marsh-P3-124.jpg', red]]);
    expect(ownPhotos(own).map(({ shows, lengthPx }) => [shows, lengthPx])).toEqual([['a red leaf', null]]);
  });

  test('whose words alone are changed keeps its file, whatever it is called', () => {
    const text = `${yamlOf(marsh())}photos:\n  - { find: P3-124, file: mine.jpg, shows: a, credit: b } # mine\n`;
    const own: OwnFiles = {
      files: [file('sites/wendle-marsh.yaml', text)],
      photos: new Map([['mine.jpg', blue]]),
    };
    const from = { site: 'wendle-marsh', find: 'P3-124' };
    const changed = put(own, photo({ from, shows: 'c', credit: 'b', lengthPx: null }));
    expect(yamlOf(changed)).toBe(text.replace('shows: a', 'shows: c'));
    expect([...changed.photos]).toEqual([['mine.jpg', blue]]);
    // Another picture of it goes by its site and find, and the old one is gone.
    const replaced = put(changed, photo({ from, bytes: red }));
    expect([...replaced.photos]).toEqual([['wendle-marsh-P3-124.jpg', red]]);
  });

  test('given to another find leaves nothing behind under the first', () => {
    const from = { site: 'wendle-marsh', find: 'P3-124' };
    const own = put(marsh(), photo(), photo({ find: 'P7-165', from }));
    expect(ownPhotos(own).map(({ find }) => find)).toEqual(['P7-165']);
    expect([...own.photos.keys()]).toEqual(['wendle-marsh-P7-165.jpg']);
  });

  test('never takes the name of another, of its own files or named by a row', () => {
    const taken: OwnFiles = { ...marsh(), photos: new Map([['wendle-marsh-P3-124.jpg', red]]) };
    const own = put(taken, photo());
    expect([...own.photos]).toEqual([
      ['wendle-marsh-P3-124.jpg', red],
      ['wendle-marsh-P3-124-2.jpg', blue],
    ]);
    expect(ownPhotos(own)[0]?.file).toBe('wendle-marsh-P3-124-2.jpg');
  });

  test('is taken out, row and file, and the site file is as it was', () => {
    const own = put(marsh(), photo(), photo({ find: 'P7-165', bytes: red }));
    const one = takeOutPhoto(own, 'wendle-marsh', 'P3-124');
    expect([...(one?.photos.keys() ?? [])]).toEqual(['wendle-marsh-P7-165.jpg']);
    const none = takeOutPhoto(one ?? NO_FILES, 'wendle-marsh', 'P7-165');
    expect(none).toEqual(marsh());
    expect(takeOutPhoto(none ?? NO_FILES, 'wendle-marsh', 'P7-165')).toBeNull();
  });

  test('whose file another row names too leaves the file there', () => {
    const text = `id: wendle-marsh
photos:
  - { find: P3-124, file: both.jpg }
  - { find: P7-165, file: both.jpg }
`;
    const own = { files: [file('sites/wendle-marsh.yaml', text)], photos: new Map([['both.jpg', blue]]) };
    expect([...(takeOutPhoto(own, 'wendle-marsh', 'P3-124')?.photos.keys() ?? [])]).toEqual(['both.jpg']);
  });

  test('of a site that is not there, or whose file cannot be written, is not put in', () => {
    expect(putPhoto(NO_FILES, photo())).toEqual({ own: null, fault: 'no-site' });
    const text = 'id: wendle-marsh\nid: wendle-marsh\n';
    const own = { files: [file('sites/wendle-marsh.yaml', text)], photos: new Map() };
    expect(putPhoto(own, photo())).toEqual({ own: null, fault: 'unwritten' });
  });

  test('beyond what a site may carry is not put in, and one in the place of another may be', () => {
    const count = Math.floor(MOST_PHOTOS_BYTES / (MOST_PHOTO_BYTES + 24));
    const heavy = (): Uint8Array<ArrayBuffer> => {
      const bytes = new Uint8Array(MOST_PHOTO_BYTES);
      bytes.set(blue);
      return bytes;
    };
    const finds = Array.from({ length: count }, (_, index) => `P1-${index + 1}`);
    const small = { ...NO_FILES, files: [file('sites/wendle-marsh.yaml', 'id: wendle-marsh\n')] };
    const full = put(small, ...finds.map((find) => photo({ find, bytes: heavy() })));
    const weight = photosWeight(ownPhotos(full), 'wendle-marsh');
    expect(weight).toBeGreaterThan(MOST_PHOTOS_BYTES - MOST_PHOTO_BYTES);
    expect(putPhoto(full, photo({ bytes: heavy() }))).toEqual({ own: null, fault: 'too-heavy' });
    expect(putPhoto(full, photo({ find: 'P1-1', bytes: heavy() })).own).not.toBeNull();
  });

  test('is carried over where its site file is written anew, and nowhere twice', () => {
    const before = put(marsh(), photo(), photo({ find: 'P7-165', bytes: red }));
    const again = { ...marsh(), photos: before.photos };
    expect(carryPhotos(before, again)).toEqual(before);
    expect(carryPhotos(before, before)).toEqual(before);
    expect(carryPhotos(before, NO_FILES)).toEqual(NO_FILES);
  });
});
