import { expect, test } from 'vitest';
import { orders } from '../../src/command/orders.ts';

/** Runs the verb on one file held in memory. */
async function run(text: string): Promise<{ code: number; out: string; complaints: string }> {
  let [out, complaints] = ['', ''];
  const io = {
    write: (written: string) => void (out += written),
    complain: (written: string) => void (complaints += written),
    read: async () => text,
  };
  return { code: await orders(['s.yaml'], io), out, complaints };
}

test('valid orders are counted', async () => {
  const { code, out, complaints } = await run(
    'steps:\n  - { id: find-nodule, mustFollow: [] }\n  - { id: rough-out, mustFollow: [find-nodule] }\n  - { id: haft }\n  - { id: fit, mustFollow: [haft, rough-out] }\n',
  );
  expect({ code, complaints }).toEqual({ code: 0, complaints: '' });
  expect(JSON.parse(out)).toEqual({ steps: ['find-nodule', 'rough-out', 'haft', 'fit'], validOrders: 3 });
});

test('a count beyond 2^53 is written out as digits', async () => {
  const free = Array.from({ length: 19 }, (_, step) => `  - { id: s${step}, mustFollow: [] }`).join('\n');
  expect(JSON.parse((await run(`steps:\n${free}\n`)).out).validOrders).toBe('121645100408832000'); // 19!
});

test('a circle is named, with its place, and leaves no order', async () => {
  const { code, out, complaints } = await run(
    'steps:\n  - { id: a, mustFollow: [c] }\n  - { id: b, mustFollow: [a] }\n  - { id: c, mustFollow: [b] }\n',
  );
  expect(code).toBe(0);
  expect(JSON.parse(out)).toEqual({ steps: ['a', 'b', 'c'], validOrders: 0, cycle: ['a', 'b', 'c'] });
  expect(complaints).toContain('s.yaml:2:11: caution');
  expect(complaints).toContain('a, then b, then c, then a');
});

test.each([
  {
    name: 'a step misspelt',
    text: 'steps:\n  - { id: rough-out }\n  - { id: grind, mustFollow: [ruogh-out] }\n',
    place: 's.yaml:3:31:',
    mend: 'write "rough-out"',
  },
  {
    name: 'a key misspelt',
    text: 'steps:\n  - { id: grind, mustfollow: [] }\n',
    place: 's.yaml:2:18:',
    mend: 'write "mustFollow"',
  },
  {
    name: 'a step twice',
    text: 'steps:\n  - { id: grind }\n  - { id: grind }\n',
    place: 's.yaml:3:11:',
    mend: 'another id',
  },
  { name: 'no steps', text: 'stops: []\n', place: 's.yaml:', mend: 'steps' },
  { name: 'an empty file', text: '', place: 's.yaml:1:1:', mend: 'steps' },
])('$name is told with its place and a mend', async ({ text, place, mend }) => {
  const { code, out, complaints } = await run(text);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(complaints).toContain(place);
  expect(complaints).toContain(mend);
});

test('numbers may name steps', async () => {
  const { out } = await run('steps: [{ id: 1 }, { id: 2, mustFollow: [1] }]');
  expect(JSON.parse(out)).toEqual({ steps: ['1', '2'], validOrders: 1 });
});
