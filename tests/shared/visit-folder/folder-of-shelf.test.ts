import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { saveZip, tellApart, type CarriedVisit } from '../../../shared/visit-folder/index.ts';
import { folderOfShelf } from '../../../shared/visit-folder/folder-of-shelf.ts';
import { safeName } from '../../../shared/visit-folder/safe-name.ts';
import { gravelEnd } from '../../content/zips/gravel-end.ts';

const visit = (name: string, more: Partial<CarriedVisit> = {}): CarriedVisit => ({
  ...gravelEnd,
  name,
  ...more,
});
const paths = (visits: readonly CarriedVisit[]): readonly string[] =>
  folderOfShelf(visits).files.map(({ path }) => path);
const apart = (visits: readonly CarriedVisit[]) =>
  folderOfShelf(visits).visits.flatMap((placed) => tellApart(placed) ?? []);

const SITE_FILES = ['sites/gravel-end.finds.csv', 'sites/gravel-end.yaml', 'sites/photos/jaw.jpg'];

test('visits to the same finds share one content folder, and each file lies there once', () => {
  expect(paths([visit('b'), visit('a')])).toEqual(['lessons/a.md', ...SITE_FILES, 'lessons/b.md']);
  expect(apart([visit('b'), visit('a')])).toEqual([]);
});

const changed = gravelEnd.files.map((file) => ({
  ...file,
  text: file.text.replace('pig-jaw,bone,118', 'pig-jaw,bone,96'),
}));

test.each([
  { name: 'finds that differ', other: visit('b', { files: changed }) },
  {
    name: 'a photograph that differs',
    other: visit('b', { photos: new Map([['jaw.jpg', Uint8Array.from([1])]]) }),
  },
  { name: 'a photograph that is missing', other: visit('b', { photos: new Map() }) },
  { name: 'a table that is missing', other: visit('b', { files: gravelEnd.files.slice(1) }) },
  {
    name: 'no finds of its own, by a site of that name',
    other: visit('b', { files: [], photos: new Map() }),
  },
])('a visit with $name has a folder of its own, and it is said', ({ other }) => {
  expect(apart([visit('a'), other])).toEqual([
    'b has a folder of its own, apart/b: by the site gravel-end it does not mean the same finds as a.',
  ]);
  expect(paths([visit('a'), other])).toContain('apart/b/lessons/b.md');
});

test('what does not go with the site that the lesson names keeps its visit apart', () => {
  const elsewhere = visit('b', { text: gravelEnd.text.replace('site: gravel-end', 'site: wendle-marsh') });
  expect(apart([visit('a'), elsewhere])).toEqual([
    'b has a folder of its own, apart/b: it carries what does not go with the site that its lesson names (gravel-end.finds.csv, gravel-end.yaml, jaw.jpg).',
  ]);
});

test('two visits of one name are told apart, and each keeps its name', () => {
  const shelf = [visit('pit'), visit('pit', { text: '---\ntitle: Another\n---\n' }), visit('pit')];
  expect(paths(shelf).filter((path) => path.endsWith('.md'))).toEqual([
    'lessons/pit.md',
    'apart/pit/lessons/pit.md',
    'apart/pit-2/lessons/pit.md',
  ]);
  expect(apart(shelf)).toEqual([
    'pit has a folder of its own, apart/pit: another visit has the same name.',
    'pit has a folder of its own, apart/pit-2: another visit has the same name.',
  ]);
});

test('the note inside says what lies apart, what is not in here, and every file', () => {
  const shelf = [visit('a'), visit('b', { files: [], photos: new Map() })];
  const note = new TextDecoder().decode(unzipSync(saveZip(shelf).bytes)['READ-ME.txt']);
  expect(note).toContain('b has a folder of its own, apart/b: by the site gravel-end');
  expect(note).toContain('b goes by the finds of the site gravel-end, which must be there already');
  for (const path of paths(shelf)) expect(note).toContain(`\n${path}\n`);
  expect(Math.max(...note.split('\n').map((line) => line.length))).toBeLessThan(140);
});

test.each([
  { name: 'two-pits', safe: 'two-pits' },
  { name: 'hügel', safe: 'hügel' },
  { name: 'pit 3/4?', safe: 'pit 3-4-' },
  { name: '../../etc', safe: '-..-etc' },
  { name: 'a\u0000b', safe: 'a-b' },
  { name: 'con', safe: 'visit-con' },
  { name: 'ends in a dot.', safe: 'ends in a dot' },
  { name: ' . ', safe: 'lesson' },
  { name: '', safe: 'lesson' },
])('“$name” is kept as “$safe”', ({ name, safe }) => {
  expect(safeName(name)).toBe(safe);
});

test('a name is never longer than a file system takes', () => {
  expect(new TextEncoder().encode(safeName('土'.repeat(300))).length).toBeLessThanOrEqual(200);
});
