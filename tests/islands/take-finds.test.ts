import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { NO_ANSWERS } from '../../shared/finds-in/index.ts';
import { readContent, type ContentFile } from '../../shared/library/index.ts';
import { takeFinds } from '../../src/bench/take-finds.ts';
import { readFiles } from '../../src/loaders/read-files.ts';
import { home } from '../demo.ts';

const content = await readFiles(join(home, 'content'));
const LIST =
  'SF,Context,Object,Material,L (mm),W (mm),Th (mm)\n101,1102,flake,flint,52,38,9\n195,1102,core,flint,60,50,40\n';

/** As the worker of the Bench asks it, with the lead's own files over those of the site. */
function take(into: string | null, own: readonly ContentFile[] = [], name = 'My list') {
  const files = [...own, ...content.filter(({ path }) => !own.some((file) => file.path === path))];
  const { library } = readContent(files);
  const ask = {
    ask: 'finds-in',
    number: 1,
    text: LIST,
    answers: NO_ANSWERS,
    name,
    into,
    files: own,
  } as const;
  return takeFinds(ask, library, files, []);
}

test('into a site of ours, a copy of its file and its table is given, called by their own names', () => {
  const { files, site, into } = take('wendle-marsh');
  expect(site).toBe('wendle-marsh');
  expect(into).toMatchObject({ name: 'Wendle Marsh', errors: 0, counts: { fresh: 1, same: 1 } });
  expect(files.map(({ path, file }) => [path, file])).toEqual([
    ['sites/wendle-marsh.yaml', 'wendle-marsh.yaml'],
    ['sites/wendle-marsh.finds.csv', 'wendle-marsh.finds.csv'],
  ]);
  const table = readFileSync(join(home, 'content/sites/wendle-marsh.finds.csv'), 'utf8');
  expect(files[1]?.text.startsWith(`${table}P1,195,1102,core,`)).toBe(true);
});

test('taken again it gives no files, and what was taken before counts', () => {
  const { files } = take('wendle-marsh');
  expect(take('wendle-marsh', files)).toMatchObject({
    files: [],
    into: { counts: { fresh: 0, same: 2, waiting: 0 } },
  });
});

test('errors in the site’s own files are told: finds of such rows are not seen', () => {
  const own = take('wendle-marsh').files.map((file) => ({
    ...file,
    text: file.text.replace('P1,101,1102,flake,flint', 'P1,101,1102,flake,flnt'),
  }));
  expect(take('wendle-marsh', own).into).toMatchObject({ errors: 1, counts: { fresh: 1, same: 1 } });
});

test('a new site by the name of one that is there is told', () => {
  expect(take(null)).toMatchObject({ into: null, site: 'my-list', isTaken: false });
  expect(take(null, [], 'Wendle Marsh')).toMatchObject({ site: 'wendle-marsh', isTaken: true });
});
