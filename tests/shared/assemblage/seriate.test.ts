import { expect, test } from 'vitest';
import { isRobinsonForm, likenessMatrix, robinsonBreaks, seriate } from '../../../shared/assemblage/index.ts';
import { shuffle, stream, uniform } from '../../../shared/chance/index.ts';
import { wendleMarsh } from '../../reference/wendle-marsh-presence.ts';

/** Likeness that falls with the distance along a line on which the pits stand at uneven steps. */
function alongLine(pits: number): number[][] {
  const chance = stream('along a line');
  const places: number[] = [];
  for (let pit = 0, place = 0; pit < pits; pit += 1) places.push((place += 0.2 + uniform(chance)));
  return places.map((one) => places.map((other) => 200 * Math.exp(-Math.abs(one - other) / 4)));
}

const mixed = (matrix: readonly (readonly number[])[], order: readonly number[]): number[][] =>
  order.map((one) => order.map((other) => matrix[one]?.[other] ?? 0));

test.each([{ pits: 2 }, { pits: 5 }, { pits: 8 }, { pits: 9 }, { pits: 15 }, { pits: 40 }])(
  '$pits pits along a line, shuffled, are put back',
  ({ pits }) => {
    const order = shuffle(stream(`mix ${pits}`), [...Array.from({ length: pits }).keys()]);
    const result = seriate(mixed(alongLine(pits), order));
    expect(result).toMatchObject({ isRobinson: true, breaks: { events: 0 } });
    const back = result.order.map((place) => order[place] ?? -1);
    const straight = [...Array.from({ length: pits }).keys()];
    expect([straight, straight.toReversed()]).toContainEqual(back);
    if (pits <= 9) expect(result.asGood).toBe(1);
  },
);

test('a ring of pits has no order without breaks', () => {
  const ring = Array.from({ length: 7 }, (_, one) =>
    Array.from({ length: 7 }, (_other, other) => 10 - Math.min((7 + one - other) % 7, (7 + other - one) % 7)),
  );
  const result = seriate(ring);
  expect(result.isRobinson).toBe(false);
  expect(result.asGood).toBeGreaterThan(1);
});

test('pits all as alike stand in any order', () => {
  const same = Array.from({ length: 4 }, () => [5, 5, 5, 5]);
  expect(seriate(same)).toMatchObject({ isRobinson: true, asGood: 12 }); // 4!/2, mirrors once
});

test.each([
  { pits: 0, asGood: 1 },
  { pits: 1, asGood: 1 },
  { pits: 2, asGood: 1 },
])('$pits pits are in order', ({ pits, asGood }) => {
  const matrix = alongLine(pits);
  expect(seriate(matrix)).toMatchObject({ isRobinson: true, asGood });
});

test('on nine pits the order is proved to have the fewest breaks of all 181,440', () => {
  const matrix = likenessMatrix(wendleMarsh, 'jaccard').map((row) => row.map((value) => value ?? 0));
  const { order, breaks, asGood } = seriate(matrix);
  expect(new Set(order).size).toBe(9);
  expect(breaks.events).toBe(robinsonBreaks(matrix, order).events);
  expect(asGood).toBeGreaterThan(0);
  expect(breaks.events).toBe(27); // fewest of all 9!/2 orders, by another program (DER)
});

test('a pit less like itself than like another is in no Robinson form', () => {
  expect(isRobinsonForm([[1, 2], [2, 3]])).toBe(false); // prettier-ignore
});

test('likeness that is not square is a slip of the caller', () => {
  expect(() => seriate([[1, 2]])).toThrow(RangeError);
});
