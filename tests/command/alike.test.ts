import { expect, test } from 'vitest';
import { alike } from '../../src/command/alike.ts';

const table = 'pit,flake,pig jaw,pin\nP1,12,1,0\nP2,3,0,2\nP3,5,1,1\nP9,0,0,0\n';

/** Runs the verb on one file held in memory. */
async function run(
  text: string,
  ...options: string[]
): Promise<{ code: number; out: string; complaints: string }> {
  let [out, complaints] = ['', ''];
  const io = {
    write: (written: string) => void (out += written),
    complain: (written: string) => void (complaints += written),
    read: async () => text,
  };
  return { code: await alike(['c.csv', ...options], io), out, complaints };
}

test('likeness and chance of each pair, as JSON', async () => {
  const { code, out } = await run(table, '--by', 'brainerd-robinson', '--shuffles', '500', '--seed', '7');
  expect(code).toBe(0);
  const report = JSON.parse(out);
  expect(report).toMatchObject({ kinds: ['flake', 'pig jaw', 'pin'], pits: ['P1', 'P2', 'P3', 'P9'] });
  // By hand: percentages 92.3, 7.7, 0 against 60, 0, 40 differ by 80 in all.
  expect(report.matrix[0][1]).toBeCloseTo(120, 9);
  expect(report.matrix[0][3]).toBeNull();
  expect(report.chance).toMatchObject({ keeps: 'finds', isExact: false, tables: 500, seed: '7', site: null });
  expect(report.chance.matrix[0][0]).toBeNull();
  expect(report.chance.matrix[0][1]).toBe(report.chance.matrix[1][0]);
});

test('the same seed gives the same bytes', async () => {
  const options = ['--by', 'jaccard', '--shuffles', '300', '--seed', 'marsh'];
  expect((await run(table, ...options)).out).toBe((await run(table, ...options)).out);
});

test('few tables are all looked at, unless shuffles are asked for', async () => {
  expect(JSON.parse((await run(table, '--by', 'dice')).out).chance).toMatchObject({
    keeps: 'both',
    isExact: true,
    tables: 2,
  });
  expect(JSON.parse((await run(table, '--by', 'dice', '--shuffles', '40')).out).chance).toMatchObject({
    isExact: false,
    tables: 40,
  });
  expect(JSON.parse((await run(table, '--shuffles', '0')).out).chance).toBeNull();
});

test.each([
  { name: 'a kind twice', text: 'pit,flake,flake\nP1,1,2\n', place: 'c.csv:1:11:' },
  { name: 'a pit twice', text: 'pit,flake\nP1,1\nP1,2\n', place: 'c.csv:3:1:' },
  { name: 'a word for a count', text: '\uFEFFpit,flake\r\nP1,none\r\n', place: 'c.csv:2:4:' },
  { name: 'an empty cell', text: 'pit,flake,pin\nP1,,2\n', place: 'c.csv:2:4:' },
  { name: 'half a find', text: 'pit,flake\nP1,0.5\n', place: 'c.csv:2:4:' },
  { name: 'less than none', text: 'pit,flake\nP1,-2\n', place: 'c.csv:2:4:' },
  { name: 'a row too short', text: 'pit,flake,pin\nP1,2\n', place: 'c.csv:2:1:' },
  { name: 'a pit without a name', text: 'pit,flake\n,2\n', place: 'c.csv:2:1:' },
  { name: 'a quote left open', text: 'pit,flake\n"P1,2\n', place: 'c.csv:2:1:' },
  { name: 'an empty file', text: '', place: 'c.csv:1:1:' },
  { name: 'kinds and no pits', text: 'pit,flake\n', place: 'c.csv:1:1:' },
  { name: 'more finds than can be dealt', text: 'pit,flake,pin\nP1,999999,1\nP2,1,5\n', place: 'c.csv:3:4:' },
])('$name is told with its place, what was expected and a mend', async ({ text, place }) => {
  const { code, out, complaints } = await run(text);
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(complaints).toContain(place);
  expect(complaints).toMatch(/expected .+; received .+ \(.+\)/);
});

test('a quoted name may hold commas, quotes and line ends; places after it still hold', async () => {
  const { complaints } = await run('pit,"flake, ""small""\nor large",pin\nP1,3,x\n');
  expect(complaints).toContain('c.csv:3:6:');
});

test.each([
  { name: 'an unknown measure', options: ['--by', 'jacard'], told: 'write "jaccard"' },
  { name: 'shuffles that are no number', options: ['--shuffles', 'many'], told: '--shuffles' },
])('$name: not understood', async ({ options, told }) => {
  const { code, complaints } = await run(table, ...options);
  expect(code).toBe(2);
  expect(complaints).toContain(told);
});

test('without a file it says what it needs', async () => {
  let complaints = '';
  const io = { write: () => {}, complain: (text: string) => void (complaints += text), read: async () => '' };
  expect(await alike([], io)).toBe(2);
  expect(complaints).toContain('COUNTS.csv');
});
