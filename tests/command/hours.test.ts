import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { hours } from '../../src/command/hours.ts';

async function run(...argv: string[]): Promise<{ code: number; out: string; errors: string[] }> {
  let out = '';
  const errors: string[] = [];
  const code = await hours(argv, {
    write: (text) => void (out += text),
    complain: (text) => void errors.push(text),
    read: (path) => readFile(path, 'utf8'),
    home: fileURLToPath(new URL('../../', import.meta.url)),
  });
  return { code, out, errors };
}

test('an axe as JSON: six figures, each with low, middle, high, status and sources', async () => {
  const { code, out, errors } = await run('--length', '120', '--width', '52', '--thickness', '27', '--json');
  expect(code).toBe(0);
  expect(errors).toEqual([]);
  const figures: Record<string, unknown> = JSON.parse(out);
  expect(Object.keys(figures)).toEqual([
    'massGrams',
    'knappingMinutes',
    'knappingMinutesWithFailures',
    'grindingHours',
    'haftingHours',
    'totalHours',
  ]);
  expect(figures['massGrams']).toMatchObject({ unit: 'g', status: 'FM' });
  expect(figures['totalHours']).toMatchObject({
    unit: 'h',
    status: 'ASM',
    sources: expect.arrayContaining(['fr-rates', 'celt-log']),
  });
});

test('choices change the answer; a pecked stone has pecking hours', async () => {
  const size = ['--length', '150', '--width', '60', '--thickness', '42', '--json'];
  const celt = await run(
    ...size,
    '--form',
    'pecked-celt',
    '--stone',
    'dolerite',
    '--preform',
    'pecked',
    '--finish',
    'smooth',
  );
  expect(JSON.parse(celt.out)).toMatchObject({ peckingHours: { unit: 'h' }, knappingMinutes: { middle: 0 } });
  const edge = await run(
    ...size,
    '--extent',
    'edge',
    '--skill',
    'master',
    '--grinder',
    'quartzite-sledge',
    '--mined',
  );
  expect(edge.code).toBe(0);
});

test('a tree', async () => {
  const { code, out } = await run(
    '--fell',
    '20',
    '--wood',
    'ash',
    '--axe',
    'antler-sleeve',
    '--skill',
    'experienced',
    '--json',
  );
  expect(code).toBe(0);
  // 75.1 min, by hand: 0.015 × 1.4 × 2 × 20^2.5.
  expect(JSON.parse(out)).toMatchObject({ fellingMinutes: { middle: 75.1319 } });
});

test('the list names ids, limits and quantities, as text and as JSON', async () => {
  const { code, out } = await run('--list');
  expect(code).toBe(0);
  for (const word of [
    'fine-tuff',
    'weighted-pull',
    'house-stakes-hours',
    '40 to 450 mm',
    '(when none is given)',
  ])
    expect(out).toContain(word);
  expect(JSON.parse((await run('--list', '--json')).out)).toMatchObject({ defaults: { stone: 'flint' } });
});

test('as text: one line a figure, with its ends and how it is known', async () => {
  const { out } = await run('--length', '120', '--width', '52', '--thickness', '27');
  expect(out).toMatch(/^mass +245 g +\(206 to 272\) +from memory\n/);
  expect(out).toMatch(/the whole +25\.9 h +\(12\.6 to 57\.6\) +rests on our judgement\n/);
});

test.each([
  { name: 'no sizes', argv: [], code: 1, says: 'length: expected a number; received none' },
  {
    name: 'a size out of range',
    argv: ['--length', '9', '--width', '52', '--thickness', '27'],
    code: 1,
    says: 'from 40 to 450 mm',
  },
  {
    name: 'a stone misspelt',
    argv: ['--length', '120', '--width', '52', '--thickness', '27', '--stone', 'flnt'],
    code: 1,
    says: 'Did you mean flint?',
  },
  {
    name: 'a size that is no number',
    argv: ['--length', 'long'],
    code: 2,
    says: '--length: expected a number; received "long"',
  },
  { name: 'a stray word', argv: ['axe'], code: 2, says: 'expected options only' },
])('$name: exit code $code and a sentence', async ({ argv, code, says }) => {
  const result = await run(...argv);
  expect(result.code).toBe(code);
  expect(result.out).toBe('');
  expect(result.errors.join('\n')).toContain(says);
});

test('help', async () => {
  expect((await run('--help')).out).toContain('pitlore hours --list');
});
