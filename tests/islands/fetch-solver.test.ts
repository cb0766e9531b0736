import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { fetchSolver } from '../../src/solver/fetch-solver.ts';

const program = Uint8Array.from([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0, 7, 7, 7]);
const addressOf = (bytes: Uint8Array): string =>
  `data:application/octet-stream;base64,${Buffer.from(bytes).toString('base64')}`;

test.each([
  { name: 'pressed, as it is served', bytes: gzipSync(program) },
  { name: 'whole, where the browser has undone that', bytes: program },
])('the solver comes whole: $name', async ({ bytes }) => {
  expect(new Uint8Array(await fetchSolver(addressOf(bytes)))).toEqual(program);
});

test('half a pressed file is no solver', async () => {
  await expect(fetchSolver(addressOf(gzipSync(program).subarray(0, 15)))).rejects.toThrow();
});
