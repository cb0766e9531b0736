import { expect, test } from 'vitest';
import { oneAtATime } from '../../src/bench/one-at-a-time.ts';

test('while one ask is under way only the newest of the others is kept', () => {
  const put: string[] = [];
  const asks = oneAtATime<string>((wanted) => put.push(wanted));
  for (const wanted of ['G', 'Gr', 'Gra', 'Grav']) asks.ask(wanted);
  expect(put).toEqual(['G']);
  asks.answered();
  expect(put).toEqual(['G', 'Grav']);
  asks.ask('Gravel');
  asks.answered();
  asks.answered();
  expect(put).toEqual(['G', 'Grav', 'Gravel']);
  asks.ask('Gravel E');
  expect(put).toEqual(['G', 'Grav', 'Gravel', 'Gravel E']);
});
