import { access, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { adults } from '../../src/command/adults.ts';
import { hazards } from '../../src/command/hazards.ts';
import type { Io } from '../../src/command/io.ts';
import { home } from '../demo.ts';

const lesson = join(home, 'content/lessons/who-made-this.md');

async function run(
  verb: typeof adults,
  ...argv: string[]
): Promise<{ code: number; out: string; errors: string }> {
  let [out, errors] = ['', ''];
  const io: Io = {
    write: (text) => void (out += text),
    complain: (text) => void (errors += text),
    read: (path) => readFile(path, 'utf8'),
    save: () => Promise.reject(new Error('nothing is written')),
    exists: (path) =>
      access(path).then(
        () => true,
        () => false,
      ),
    home,
  };
  return { code: await verb(argv, io), out, errors };
}

async function written(text: string): Promise<string> {
  const file = join(await mkdtemp(join(tmpdir(), 'pitlore-')), 'situation.yaml');
  await writeFile(file, text);
  return file;
}

test('a lesson for thirty of seven to nine: 1 to 6 for the youngest, so five (DfEE 1998)', async () => {
  const argv = [lesson, '--pupils', '30', '--ages', '7-9', '--framework', 'england-visits', '--json'];
  const { code, out } = await run(adults, ...argv);
  expect(code).toBe(0);
  const answer: Record<string, unknown> = JSON.parse(out);
  expect(answer).toMatchObject({
    ratioAdults: 5,
    stationSupervisors: 2,
    supervisors: 5,
    practitioners: 0,
    totalAdults: 5,
    firstAiders: 1,
    refusals: [],
  });
  expect(answer['hazards']).toContain('sharp-edges');
  expect(answer['controls']).toContain('sharp-edgecheck');
  expect(answer['because']).toContainEqual({
    rule: 'decided',
    says: 'the ratio decides: at least 5 supervisors by the figures you chose',
  });
});

test('of two frameworks the stricter decides: 1 to 8 for nine-year-olds, so four (NSPCC 2023)', async () => {
  const argv = [lesson, '--pupils', '30', '--ages', '9-11', '--framework', 'nspcc'];
  const { out } = await run(adults, ...argv, '--framework', 'england-visits', '--json');
  expect(JSON.parse(out)).toMatchObject({ ratioAdults: 4, supervisors: 4 });
});

test('a figure of one’s own council', async () => {
  const { out } = await run(
    adults,
    lesson,
    '--pupils',
    '12',
    '--framework',
    'local',
    '--local',
    '4',
    '--json',
  );
  expect(JSON.parse(out)).toMatchObject({ ratioAdults: 3, supervisors: 3 });
});

test('as text: the number, the reasons, and what comes first', async () => {
  const { out } = await run(
    adults,
    lesson,
    '--pupils',
    '30',
    '--ages',
    '7-9',
    '--framework',
    'england-visits',
  );
  expect(out).toMatch(/^at least 5 adults: 5 supervisors, 0 practitioners; first aiders: 1\n/);
  expect(out).toContain('superseded guidance');
  expect(out).toContain('Local law and your employer’s policy come first');
});

const CLASSROOM = `children: 20
youngest: 10
frameworks: [england-visits]
setting: classroom
stations: [{ kind: knappingDemo, childrenAtOnce: 20, spectatorsAtMetres: 7 }]
`;

test('a situation of its own: refused with the mend, and the numbers stand all the same', async () => {
  const file = await written(CLASSROOM);
  const { code, out } = await run(adults, '--situation', file, '--content', join(home, 'content'), '--json');
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ supervisors: 2, practitioners: 1, refusals: ['X07'] });
  const { out: text } = await run(adults, '--situation', file);
  expect(text).toContain('X07 refuse: ');
  expect(text).toContain('Move it outdoors');
});

test('a situation with faults: each with its line', async () => {
  const { code, out, errors } = await run(
    adults,
    '--situation',
    await written(CLASSROOM.replace('youngest', 'yungest')),
  );
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(errors).toMatch(/situation\.yaml:2:1: error: /);
});

test('hazards of a lesson: controls strongest first, each with how it is known', async () => {
  const { code, out } = await run(hazards, lesson, '--json');
  expect(code).toBe(0);
  const { hazards: found } = JSON.parse(out) as {
    hazards: { id: string; controls: { level: string; status: string }[] }[];
  };
  const order = ['eliminate', 'substitute', 'engineering', 'administrative', 'ppe'];
  expect(found.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['sharp-edges', 'lone-adult', 'first-aid-emergency']),
  );
  for (const { id, controls } of found) {
    const places = controls.map(({ level }) => order.indexOf(level));
    expect(places, id).toEqual(places.toSorted((a, b) => a - b));
    expect(
      controls.every(({ status }) => status.length >= 2),
      id,
    ).toBe(true);
  }
  const { out: text } = await run(hazards, lesson);
  expect(text).toContain('never: No pupil uses a real edge to cut anything.');
});

test('hazards of a situation', async () => {
  const { out } = await run(hazards, '--situation', await written(CLASSROOM));
  expect(out).toContain('Stone dust from knapping');
});

test.each([
  { name: 'no pupils', argv: [lesson], says: 'adults needs a lesson and how many come' },
  { name: 'no lesson', argv: ['--pupils', '3'], says: 'adults needs a lesson' },
  { name: 'pupils in halves', argv: [lesson, '--pupils', '2.5'], says: '--pupils: expected a whole number' },
  {
    name: 'ages backwards',
    argv: [lesson, '--pupils', '9', '--ages', '9-7'],
    says: '--ages: expected the youngest',
  },
  { name: 'nobody to one adult', argv: [lesson, '--pupils', '9', '--local', '0'], says: '--local: expected' },
  {
    name: 'a framework misspelt',
    argv: [lesson, '--pupils', '9', '--framework', 'nspc'],
    says: 'Did you mean nspcc?',
  },
  {
    name: 'local without a figure',
    argv: [lesson, '--pupils', '9', '--framework', 'local'],
    says: '--local N',
  },
  {
    name: 'a setting misspelt',
    argv: [lesson, '--pupils', '9', '--setting', 'hal'],
    says: 'Did you mean hall?',
  },
  { name: 'a lesson and a situation', argv: [lesson, '--situation', 'x.yaml'], says: '--situation says all' },
  { name: 'no lesson file', argv: ['day.yaml', '--pupils', '9'], says: '--situation day.yaml' },
])('$name: not understood, and said why', async ({ argv, says }) => {
  const { code, out, errors } = await run(adults, ...argv);
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(errors).toContain(says);
});

test('a lesson that does not compile: its problems, and no number', async () => {
  const broken = join(home, 'tests/content/broken/tray-unknown.md');
  const { code, out, errors } = await run(adults, broken, '--pupils', '20');
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(errors).toContain('tray-unknown.md:');
});
