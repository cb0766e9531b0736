import { describe, expect, test } from 'vitest';
import { fair } from '../../src/command/fair.ts';
import { swap } from '../../src/command/swap.ts';

const WORLD = `aim: axe
goods:
  antler:
  flint: { hours: 1 }
  grain:
  pot:
  axe:
you:
  holds: { antler: 1 }
  wants: { antler: 1, grain: 3, flint: 4, pot: 5, axe: 9 }
  for-swapping: [grain, flint]
traders:
  ama:
    name: Ama
    holds: { flint: 1, grain: 1 }
    wants: { antler: 5, flint: 2, grain: 2 }
  bero:
    name: Bero
    holds: { flint: 1, pot: 1 }
    wants: { grain: 4, flint: [3], pot: 1 }
  cale:
    name: Cale
    holds: { axe: 1 }
    wants: { flint: 6, axe: 5, pot: 2 }
`;

async function run(
  command: typeof swap,
  argv: readonly string[],
  files: Readonly<Record<string, string>> = {},
) {
  let out = '';
  let err = '';
  const read = (path: string): Promise<string> => {
    const text = files[path];
    return text === undefined ? Promise.reject(new Error('no such file')) : Promise.resolve(text);
  };
  const code = await command(argv, {
    write: (text) => void (out += text),
    complain: (text) => void (err += text),
    read,
  });
  return { code, out, err };
}

describe('pitlore swap', () => {
  test('a world that can be played', async () => {
    const { code, out, err } = await run(swap, ['w.yaml'], { 'w.yaml': WORLD });
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual({
      solvable: true,
      par: 2,
      chains: 1,
      example: [
        { with: 'ama', give: ['antler'], take: ['flint'] },
        { with: 'cale', give: ['flint'], take: ['axe'] },
      ],
      betterOff: [
        { trader: 'you', gain: 8 },
        { trader: 'ama', gain: 3 },
        { trader: 'cale', gain: 1 },
      ],
    });
  });

  test('a world that cannot: the answer, and the place of what to change', async () => {
    const { code, out, err } = await run(swap, ['w.yaml'], {
      'w.yaml': WORLD.replace('wants: { flint: 6, axe', 'wants: { flint: 3, axe'),
    });
    expect(code).toBe(1);
    expect(JSON.parse(out)).toEqual({ solvable: false, par: null, chains: 0, example: null, betterOff: [] });
    expect(err).toContain('w.yaml:24:12: error: expected a chain of swaps');
    expect(err).toContain('let Cale want "pot" at 6 or more (now 2): then "axe" is 3 handovers away');
  });

  test.each([
    {
      name: 'a key nobody knows',
      from: 'name: Ama',
      to: 'nme: Ama',
      place: 'w.yaml:14:5: error: expected one of: name, holds',
    },
    {
      name: 'a key that is missing',
      from: 'aim: axe\n',
      to: '',
      place: 'w.yaml:1:1: error: expected the key "aim"',
    },
    {
      name: 'a worth in words',
      from: 'flint: 2, grain: 2 }',
      to: 'flint: two, grain: 2 }',
      place: 'w.yaml:16:32: error: expected a number, or a list; received "two"',
    },
    {
      name: 'half a thing',
      from: 'holds: { axe: 1 }',
      to: 'holds: { axe: 0.5 }',
      place: 'w.yaml:23:19: error: expected a whole number; received "0.5"',
    },
    {
      name: 'a door that is neither',
      from: 'name: Bero',
      to: 'door: ajar',
      place: 'w.yaml:18:11: error: expected one of: open, gift; received "ajar"',
    },
    {
      name: 'a good not listed',
      from: 'holds: { axe: 1 }',
      to: 'holds: { axe: 1, hat: 1 }',
      place: 'w.yaml:23:22: error: expected one of the goods: antler, flint',
    },
    {
      name: 'a want that rises',
      from: 'flint: [3]',
      to: 'flint: [3, 4]',
      place: 'w.yaml:20:31: error: expected each worth no more than the one before it; received 4 after 3',
    },
    {
      name: 'a bracket left open',
      from: 'holds: { antler: 1 }',
      to: 'holds: { antler: 1',
      place: 'w.yaml:10:3: error: expected lines of',
    },
    {
      name: 'an aim that is none',
      from: 'aim: axe',
      to: 'aim: adze',
      place: 'w.yaml:1:6: error: expected one of the goods: antler, flint',
    },
    {
      name: 'one trader twice',
      from: '  cale:',
      to: '  bero:',
      place: 'w.yaml:21:3: error: expected each key once',
    },
  ])('$name is told with its place', async ({ from, to, place }) => {
    const { code, err } = await run(swap, ['w.yaml'], { 'w.yaml': WORLD.replace(from, to) });
    expect(err).toContain(place);
    expect(code).toBe(1);
  });

  test.each([
    { name: 'no file named', argv: [], says: 'swap needs one world file' },
    { name: 'a band that is none', argv: ['w.yaml', '--band', '3-4'], says: 'received "3-4"' },
  ])('$name: 2, and how to', async ({ argv, says }) => {
    const { code, out, err } = await run(swap, argv, { 'w.yaml': WORLD });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(says);
  });

  test.each(['', '~', '[]', '3', 'aim: [', '\uFEFFaim: axe', 'a: &a [*a]', 'goods: {a: {a: {a: 1}}}'])(
    'any text at all gives a problem, never a throw: %j',
    async (text) => {
      const { code, err } = await run(swap, ['w.yaml'], { 'w.yaml': text });
      expect(code).toBe(1);
      expect(err).toMatch(/^w\.yaml:\d+:\d+: error: /);
    },
  );
});

test.each([
  { name: 'a file that is not there', argv: ['x.yaml'] },
  { name: 'an option that is none', argv: ['w.yaml', '--fast'] },
])('$name stops the command', async ({ argv }) => {
  await expect(run(swap, argv, { 'w.yaml': WORLD })).rejects.toThrow();
});

describe('pitlore fair', () => {
  test('a class of thirty', async () => {
    const { code, out } = await run(fair, ['--pupils', '30', '--band', '9-11', '--seed', '7']);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer.possible).toBe(true);
    expect(answer.cards).toHaveLength(30);
    expect(answer.bestTotal).toBeGreaterThan(30);
    expect((await run(fair, ['--pupils', '30', '--band', '9-11', '--seed', '7'])).out).toBe(out);
    expect((await run(fair, ['--pupils', '30', '--band', '9-11', '--seed', '8'])).out).not.toBe(out);
  });

  test.each([
    { argv: ['--pupils', '3', '--band', '9-11'], says: 'from 4 to 36' },
    { argv: ['--band', '9-11'], says: 'from 4 to 36' },
    { argv: ['--pupils', '30', '--band', '9-12'], says: 'received "9-12"' },
    { argv: ['--pupils', '4.5', '--band', '9-11'], says: 'received "4.5"' },
  ])('$argv: 2, and how to', async ({ argv, says }) => {
    const { code, out, err } = await run(fair, argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(says);
  });
});
