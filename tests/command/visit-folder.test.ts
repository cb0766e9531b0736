import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { compileLesson } from '../../shared/compile/index.ts';
import { readContent } from '../../shared/library/index.ts';
import { openZip, saveZip } from '../../shared/visit-folder/index.ts';
import { readFiles } from '../../src/loaders/read-files.ts';
import { makePack } from '../../src/packs/make-pack.ts';
import { packKey } from '../../src/packs/pack-key.ts';
import { gravelEnd } from '../content/zips/gravel-end.ts';
import { home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const folder = newFolder();
const content = join(folder, 'content');
const lesson = `content/lessons/${gravelEnd.name}.md`;
afterAll(() => rmSync(folder, { recursive: true }));

beforeAll(() => {
  cpSync(join(home, 'content'), content, { recursive: true });
  // Unpacked by another reader than ours, into the content folder of a site, as the note inside says.
  for (const [path, bytes] of Object.entries(unzipSync(saveZip([gravelEnd]).bytes))) {
    const place = join(content, path);
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, bytes, { flag: 'wx' });
  }
});

test('a visit unpacked into a content folder checks clean: its lesson, its site and its finds', () => {
  const ran = runPitlore(
    ['check', lesson, 'content/sites/gravel-end.yaml', 'content/sites/gravel-end.finds.csv'],
    folder,
  );
  expect(ran).toMatchObject({ code: 0, err: '' });
  expect(ran.out).toBe('3 files checked: 0 errors, 0 cautions\n');
});

test('its pack on the command line is, byte for byte, the pack of the same visit opened on the Bench', async () => {
  expect(runPitlore(['pack', lesson, '--out', 'here.html'], folder)).toMatchObject({ code: 0, err: '' });
  const html = readFileSync(join(folder, 'here.html'), 'utf8');
  const [visit] = openZip(saveZip([gravelEnd]).bytes).visits;
  if (visit === undefined) throw new Error('nothing came out of the zip');
  // As the worker of the Bench does: the visit's own files over those of the site.
  const files = [...(await readFiles(join(home, 'content'))), ...visit.files];
  const { library } = readContent(files, files, visit.photos);
  const { plan } = compileLesson(`${visit.name}.md`, visit.text, library, visit.name);
  if (plan === null) throw new Error('the visit does not compile');
  expect(html).toContain(await packKey(visit.name, plan));
  expect(html).toContain('data:image/jpeg;base64,');
  expect(html === (await makePack(visit.name, plan, library, home)).html).toBe(true);
});
