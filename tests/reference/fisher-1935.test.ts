import { expect, test } from 'vitest';
import { fisherExact } from '../../shared/assemblage/index.ts';

test.each([
  {
    name: 'three cups of four right: 17/70 and 34/70',
    table: [
      [3, 1],
      [1, 3],
    ],
    greater: 0.242857,
    twoSided: 0.485714,
  },
  {
    name: 'all cups right: 1/70 and 2/70',
    table: [
      [4, 0],
      [0, 4],
    ],
    greater: 0.014286,
    twoSided: 0.028571,
  },
] as const)(
  'Fisher 1935, The Design of Experiments, ch. 2, the tea cups (RF): $name',
  ({ table, greater, twoSided }) => {
    const chances = fisherExact(table);
    expect(chances.greater).toBeCloseTo(greater, 6);
    expect(chances.twoSided).toBeCloseTo(twoSided, 6);
  },
);

test('Fisher exact, an empty row: only one table has these margins (DER)', () => {
  expect(fisherExact([[0, 0], [3, 5]])).toMatchObject({ greater: 1, twoSided: 1 }); // prettier-ignore
});
