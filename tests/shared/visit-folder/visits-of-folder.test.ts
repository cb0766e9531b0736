import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { openZip, visitsOfFolder } from '../../../shared/visit-folder/index.ts';
import { folderOfVisit } from '../../../shared/visit-folder/folder-of-visit.ts';
import { placeOf } from '../../../shared/visit-folder/place-of.ts';
import { whyLeft } from '../../../shared/words/en/visit-folder.ts';
import { writeZip, type FolderFile } from '../../../shared/zip/index.ts';
import { gravelEnd, PICTURE } from '../../content/zips/gravel-end.ts';
import { demoLessons, home } from '../../demo.ts';
import { plainly } from './any-visit.ts';

const file = (path: string, text = 'x'): FolderFile => ({ path, bytes: new TextEncoder().encode(text) });
const folder = folderOfVisit(gravelEnd);
const moved = (move: (path: string) => string): readonly FolderFile[] =>
  folder.map(({ path, bytes }) => ({ path: move(path), bytes }));
const left = (files: readonly FolderFile[]): Readonly<Record<string, string>> =>
  Object.fromEntries(visitsOfFolder(files).left.map(({ path, why }) => [path, why]));

test.each([
  { name: 'as we write it', move: (path: string) => path },
  { name: 'under a folder of its own', move: (path: string) => `my-visit/${path}` },
  { name: 'under two', move: (path: string) => `Downloads/my-visit/content/${path}` },
  { name: 'with the other slashes', move: (path: string) => `my-visit\\${path.replaceAll('/', '\\')}` },
  {
    name: 'with capital folders and endings',
    move: (path: string) =>
      path
        .replace(/^lessons/, 'Lessons')
        .replace(/^sites/, 'SITES')
        .replace(/\.(md|csv|yaml)$/, (all) => all.toUpperCase()),
  },
  { name: 'with a dot before it', move: (path: string) => `./${path}` },
  {
    name: 'loose, as files that were saved one by one',
    move: (path: string) => path.split('/').at(-1) ?? path,
  },
  { name: 'loose, photographs in a folder', move: (path: string) => path.replace(/^(lessons|sites)\//, '') },
])('a folder $name gives the visit', ({ move }) => {
  const { visits, left } = visitsOfFolder(moved(move));
  expect(left).toEqual([]);
  expect(visits.map(plainly)).toEqual([plainly(gravelEnd)]);
});

test('a name that was taken apart by a file system is put together again', () => {
  const { visits } = visitsOfFolder(moved((path) => path.normalize('NFD')));
  expect(visits.map(({ name }) => name)).toEqual(['gravel-end-für-alle']);
});

test('what systems leave in folders, and our own note, is passed over', () => {
  const leavings = [
    '__MACOSX/lessons/._a.md',
    '.DS_Store',
    'lessons/.DS_Store',
    'lessons/._a.md',
    'Thumbs.db',
    'sites/desktop.ini',
    'READ-ME.txt',
    'readme.md',
  ];
  expect(left([...folder, ...leavings.map((path) => file(path))])).toEqual({});
});

test('each file that is not taken is named with its reason, and the good rest is taken', async () => {
  const turned = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#987' } })
    .jpeg()
    .withMetadata({ orientation: 6 })
    .toBuffer();
  const others: readonly FolderFile[] = [
    file('../../lessons/up.md'),
    file('/lessons/root.md'),
    file('C:\\lessons\\drive.md'),
    file('lessons/sub/../x.md'),
    file('lessons/a\u0007.md'),
    file('lessons/film.mp4'),
    file('lessons/inside.zip'),
    file('vocabulary.yaml', 'materials: []'),
    file('days/open-day.yaml', 'pits: 3'),
    file('about.md', 'No head at all.'),
    { path: 'lessons/old-code.md', bytes: Uint8Array.from([0x2d, 0xe4, 0x2d]) },
    file('lessons/long.md', 'a'.repeat(1_000_001)),
    file('Sites/Gravel-End.yaml'.replace('Gravel-End', 'gravel-end')),
    file('sites/photos/my axe.jpg'),
    file('sites/photos/fake.jpg', 'not a picture'),
    file('sites/photos/cut.jpg', '\u0000'),
    { path: 'sites/photos/turned.jpg', bytes: turned },
  ];
  const read = visitsOfFolder([...others, ...folder]);
  // The one that sorts first of two alike is taken: capitals come before small letters.
  expect(read.visits.length).toBe(1);
  expect(left([...others, ...folder])).toEqual({
    '../../lessons/up.md': 'outside',
    '/lessons/root.md': 'outside',
    'C:\\lessons\\drive.md': 'outside',
    'lessons/sub/../x.md': 'outside',
    'lessons/a\u0007.md': 'outside',
    'lessons/film.mp4': 'no-part',
    'lessons/inside.zip': 'no-part',
    'vocabulary.yaml': 'no-part',
    'days/open-day.yaml': 'no-part',
    'about.md': 'no-part',
    'lessons/old-code.md': 'no-text',
    'lessons/long.md': 'too-long',
    'sites/gravel-end.yaml': 'twice',
    'sites/photos/my axe.jpg': 'photo-name',
    'sites/photos/fake.jpg': 'not-a-picture',
    'sites/photos/cut.jpg': 'not-a-picture',
    'sites/photos/turned.jpg': 'photo-turned',
  });
});

test('finds without a lesson are no visit, and it is said of each file', () => {
  expect(left(folder.slice(1))).toEqual({
    'sites/gravel-end.finds.csv': 'no-lesson',
    'sites/gravel-end.yaml': 'no-lesson',
    'sites/photos/jaw.jpg': 'no-lesson',
  });
});

test('of several lessons each has the site that it names, and what none names is told', () => {
  const lesson = (site: string): string => `---\ntitle: A\nsite: ${site}\n---\n`;
  const { visits, left } = visitsOfFolder([
    ...folder,
    file('lessons/other.md', lesson('mill-field')),
    file('lessons/ours.md', lesson('wendle-marsh')),
    // A lesson names a site by its id, which need not be what its file is called.
    file('sites/the-mill.yaml', 'name: Mill Field\nid: "mill-field" # by the river\npits: []\n'),
    file('sites/nobody.yaml', 'id: nobody\npits: []\nphotos: [{ file: lost.jpg }]\n'),
    { path: 'sites/photos/lost.jpg', bytes: PICTURE },
  ]);
  expect(
    visits.map(({ name, files, photos }) => [name, files.map(({ path }) => path), [...photos.keys()]]),
  ).toEqual([
    ['gravel-end-für-alle', ['sites/gravel-end.finds.csv', 'sites/gravel-end.yaml'], ['jaw.jpg']],
    ['other', ['sites/the-mill.yaml'], []],
    ['ours', [], []],
  ]);
  expect(left).toEqual([
    { path: 'sites/nobody.yaml', why: 'not-named' },
    { path: 'sites/photos/lost.jpg', why: 'not-named' },
  ]);
});

test('what a photograph tells beside itself is out before it is kept', async () => {
  const told = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#987' } })
    .jpeg()
    .withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '52/1 30/1 0/1' } })
    .toBuffer();
  expect(told.includes('Exif')).toBe(true);
  const { visits } = visitsOfFolder([file('lessons/a.md'), { path: 'sites/photos/jaw.jpg', bytes: told }]);
  expect(Buffer.from(visits[0]?.photos.get('jaw.jpg') ?? []).includes('Exif')).toBe(false);
});

test('the demo content folder, zipped as it is, opens: every lesson is a visit', () => {
  const content = join(home, 'content');
  const files = readdirSync(content, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => {
      const path = join(each.parentPath, each.name);
      return { path: path.slice(home.length), bytes: new Uint8Array(readFileSync(path)) };
    });
  const { visits, left, fault } = openZip(writeZip(files));
  expect(fault).toBeNull();
  expect(visits.map(({ name, text }) => ({ name, text }))).toEqual(
    demoLessons.map(({ id, text }) => ({ name: id, text })),
  );
  expect(visits[0]?.files.map(({ path }) => path)).toEqual([
    'sites/wendle-marsh.finds.csv',
    'sites/wendle-marsh.yaml',
  ]);
  expect(left.map(({ path }) => path)).toContain('content/vocabulary.yaml');
  expect(new Set(left.map(({ why }) => why))).toEqual(new Set(['no-part']));
});

test('every reason has its words', () => {
  for (const words of Object.values(whyLeft)) expect(words).toMatch(/\.$/);
});

test.each([
  { path: 'my-visit/Lessons/Two pits.MD', root: 'my-visit', part: 'lesson', within: 'lessons/Two pits.md' },
  { path: 'sites/a.yml', root: '', part: 'site', within: 'sites/a.yaml' },
  { path: 'x/sites/photos/A.JPG', root: 'x', part: 'photo', within: 'sites/photos/A.JPG' },
])('$path is a $part', ({ path, root, part, within }) => {
  expect(placeOf(path)).toMatchObject({ root, part, path: within });
});
