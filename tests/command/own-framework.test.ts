import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bandsOf } from '../../shared/curriculum/index.ts';
import { readLibrary } from '../../src/loaders/read-library.ts';
import { demoLibrary, home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const FRAMEWORK = `id: marsh-school
name: Marsh School scheme
country: nowhere
publisher: Wendle Marsh School (invented)
version: "2026"
licence: ours
note: Invented, for a test.
ages-known: invented
stages:
  - { id: class-3, label: Class 3, from: 7, to: 8 }
  - { id: class-6, label: Class 6, from: 10, to: 11 }
sources:
  - { id: scheme, citation: "Wendle Marsh School, scheme of work (invented)", seen: invented }
outcomes:
  - id: MS 3-1
    stage: class-3
    subject: history
    summary: Says how a thing was made from what can be seen on it.
    status: invented
    source: { ref: scheme, at: p. 1 }
    evidence:
      - { kind: sort, when: finds-as-evidence, grade: practised }
  - id: MS 6-1
    stage: class-6
    subject: history
    summary: Weighs two readings of one find.
    status: invented
    source: { ref: scheme, at: p. 2 }
    evidence:
      - { kind: talk, when: evidence-why, grade: practised }
`;

/** A lead's own content folder, with a framework file beside nothing of ours but what must be there. */
function folderWith(framework: string): string {
  const folder = newFolder();
  for (const name of ['vocabulary.yaml', 'bands.yaml', 'sources.yaml', 'sites', 'lessons'])
    cpSync(join(home, 'content', name), join(folder, name), { recursive: true });
  mkdirSync(join(folder, 'curricula'));
  writeFileSync(join(folder, 'curricula/marsh-school.yaml'), framework);
  return folder;
}

/** A demo lesson of that folder with one more claim. */
function lessonIn(folder: string, outcome: string): string {
  const file = join(folder, 'lessons/own.md');
  writeFileSync(
    file,
    `---\ntitle: One\nsite: wendle-marsh\nbands: [7-9]\nminutes: 20\nclaims:\n  - { outcome: ${outcome}, grade: practised }\n---\nLook.\n\n\`\`\`sort\ntitle: How was each made?\nfinds: { pit: P7, leave-out: [P7-167, P7-169, P7-170, P7-172] }\nby: made-by\ntrays: [flaked, ground, { name: heat, holds: [fired, machine] }, { name: not made, holds: [natural, burnt] }]\nminutes: 9\n\`\`\`\n`,
  );
  return file;
}

test('a framework in the folder joins ours, and its outcomes can be claimed', () => {
  const folder = folderWith(FRAMEWORK);
  const file = lessonIn(folder, 'MS 3-1');
  expect(runPitlore(['check', file, join(folder, 'curricula/marsh-school.yaml')])).toMatchObject({
    code: 0,
    err: '',
  });
  const { code, out } = runPitlore(['claims', file, '--json']);
  expect(code).toBe(0);
  expect(JSON.parse(out)[0]).toMatchObject({
    outcome: 'MS 3-1',
    framework: 'marsh-school',
    earned: true,
    status: 'invented',
  });
  // Ours still serve.
  expect(runPitlore(['claims', lessonIn(folder, 'en-hi-ks2-sources')]).code).toBe(0);
  const covered = JSON.parse(
    runPitlore(['coverage', join(folder, 'lessons'), '--framework', 'marsh-school', '--json']).out,
  );
  expect(covered[0]).toMatchObject({
    framework: 'marsh-school',
    gaps: [{ outcome: 'MS 3-1' }, { outcome: 'MS 6-1' }],
  });
});

test('its stages are met by the ages its file gives them', async () => {
  const { library, problems } = await readLibrary(folderWith(FRAMEWORK), join(home, 'content'));
  expect(problems).toEqual([]);
  const { curricula } = library;
  expect(bandsOf(curricula, 'marsh-school', 'class-3')).toEqual(['7-9']);
  expect(bandsOf(curricula, 'marsh-school', 'class-6')).toEqual(['9-11']);
  expect(bandsOf(curricula, 'marsh-school', 'class-9')).toEqual([]);
  const { code, out } = runPitlore(['claims', lessonIn(folderWith(FRAMEWORK), 'MS 6-1')]);
  expect(code).toBe(1);
  expect(out).toContain('it is for Class 6, which no band of this lesson is in');
  // Ours are met as the rules say, not by age.
  expect(bandsOf(demoLibrary.curricula, 'sct-cfe', 'first')).toEqual(['5-7', '7-9']);
});

test.each([
  ['a stage that is not there', 'stage: class-6', 'stage: clas-6', '24:12', 'write "class-6"'],
  [
    'a condition nobody knows',
    'when: finds-as-evidence',
    'when: find-as-evidence',
    '22:29',
    'write "finds-as-evidence"',
  ],
  ['a kind nobody knows', 'kind: sort', 'kind: sorting', '22:17', 'write one of: sort'],
  [
    'a source that is not listed',
    '{ ref: scheme, at: p. 2 }',
    '{ ref: schemes, at: p. 2 }',
    '28:20',
    'write "scheme"',
  ],
  [
    'an id that differs by a hyphen alone',
    'id: MS 6-1',
    'id: MS 3.1',
    '23:9',
    'give this outcome another id',
  ],
  [
    'ages the wrong way round',
    'from: 10, to: 11',
    'from: 11, to: 11',
    '11:50',
    'write the age at which pupils leave',
  ],
  ['a key nobody knows', 'licence: ours', 'license: ours', '6:1', 'write "licence"'],
  ['a grade nobody knows', 'grade: practised }\n  - id', 'grade: practiced }\n  - id', '22:55', 'practised'],
])('%s is told at its place', (_, from, to, place, mend) => {
  expect(FRAMEWORK).toContain(from);
  const folder = folderWith(FRAMEWORK.replace(from, to));
  const framework = join(folder, 'curricula/marsh-school.yaml');
  const own = runPitlore(['check', framework]);
  expect(own.code).toBe(1);
  expect(own.out).toContain(`${framework}:${place}: error: `);
  expect(own.out).toContain(mend);
});

test('a lesson that claims from a framework with a problem is told of that problem too', () => {
  const folder = folderWith(FRAMEWORK.replace('stage: class-6', 'stage: clas-6'));
  const { code, out } = runPitlore(['check', lessonIn(folder, 'MS 3-1')]);
  expect(code).toBe(1);
  expect(out).toContain(`${join(folder, 'curricula/marsh-school.yaml')}:24:12: error: `);
  expect(out).toContain('"MS 3-1"');
});

test('a file with the id of one of ours takes its place', () => {
  const folder = folderWith(FRAMEWORK.replace('id: marsh-school', 'id: us-c3'));
  const { out } = runPitlore(['coverage', join(folder, 'lessons'), '--framework', 'us-c3']);
  expect(out).toContain('Marsh School scheme: 0 of 2 outcomes');
});
