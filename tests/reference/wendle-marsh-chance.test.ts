import { expect, test } from 'vitest';
import {
  bestGroup,
  fullSetTail,
  likenessMatrix,
  sharingGroups,
  uncommonKinds,
} from '../../shared/assemblage/index.ts';
import { stream } from '../../shared/chance/index.ts';
import { wendleMarsh } from './wendle-marsh-presence.ts';

test('Wendle Marsh (invented): 22 kinds; pits 3, 5 and 8 are the most alike by Jaccard (DER)', () => {
  expect(wendleMarsh.kinds).toHaveLength(22);
  const matrix = likenessMatrix(wendleMarsh, 'jaccard');
  const of = (first: number, second: number): number => matrix[first - 1]?.[second - 1] ?? -1;
  const published = [
    { pair: [3, 5], value: 0.8 },
    { pair: [3, 8], value: 0.7 },
    { pair: [5, 8], value: 0.58 },
    { pair: [3, 4], value: 0.55 },
    { pair: [4, 8], value: 0.5 },
    { pair: [1, 7], value: 0.5 },
  ] as const;
  for (const { pair, value } of published) expect(of(pair[0], pair[1])).toBeCloseTo(value, 2);
  const named = new Set(published.map(({ pair }) => pair.join('-')));
  for (let first = 1; first <= 9; first += 1) {
    for (let second = first + 1; second <= 9; second += 1) {
      if (!named.has(`${first}-${second}`)) expect(of(first, second)).toBeLessThanOrEqual(0.465);
    }
  }
});

test('Wendle Marsh (invented): four kinds named before digging, in three or more of nine pits: exactly 715/666 792 (DER)', () => {
  expect(fullSetTail(9, [5, 4, 4, 4], 3)).toMatchObject({ numerator: 715n, denominator: 666792n });
  expect(fullSetTail(9, [5, 4, 4, 4], 3).value).toBeCloseTo(0.00107, 5);
});

test('Wendle Marsh (invented): with Grooved Ware as a fifth, exactly 10 775/84 015 792 (DER)', () => {
  expect(fullSetTail(9, [5, 4, 4, 4, 5], 3)).toMatchObject({ numerator: 10775n, denominator: 84015792n });
  expect(fullSetTail(9, [5, 4, 4, 4, 5], 3).value).toBeCloseTo(0.00013, 5);
});

test('Wendle Marsh (invented): the best of 84 trios shares five uncommon kinds; the near miss shares four (DER)', () => {
  const [best, second] = sharingGroups(wendleMarsh, { size: 3, fewest: 2, most: 5 });
  expect(best?.pits).toEqual(['3', '5', '8']);
  expect([...(best?.kinds ?? [])].toSorted()).toEqual([
    'bone pin',
    'chalk disc',
    'grooved ware sherd',
    'pig jaw',
    'polishing stone fragment',
  ]);
  expect(second?.pits).toEqual(['3', '4', '5']);
  expect([...(second?.kinds ?? [])].toSorted()).toEqual([
    'bone pin',
    'grooved ware sherd',
    'hazelnut shells',
    'pig jaw',
  ]);
  expect(uncommonKinds(wendleMarsh, 6, 9)).toEqual(['charcoal', 'flake']);
});

test('Wendle Marsh (invented): chance offers a trio as good in 0.8 to 2.2 % of shuffles, one sharing four in about 24 % (DER)', () => {
  const { chance, pile, groups, draws } = bestGroup(
    wendleMarsh,
    { size: 3, fewest: 2, most: 5 },
    20_000,
    stream('trios'),
  );
  expect(groups).toBe(84);
  expect(chance).toBeGreaterThan(0.008);
  expect(chance).toBeLessThan(0.022);
  const four = pile.slice(4).reduce((total, count) => total + count, 0) / draws;
  expect(four).toBeGreaterThan(0.22);
  expect(four).toBeLessThan(0.26);
});

test('Wendle Marsh (invented): a set of four noticed after looking comes in about one shuffle in four, 986 of 4 000 (DER)', () => {
  const { pile, draws } = bestGroup(
    wendleMarsh,
    { size: 3, fewest: 3, most: 5 },
    4000,
    stream('sets of four'),
  );
  const four = pile.slice(4).reduce((total, count) => total + count, 0) / draws;
  expect(four).toBeGreaterThan(0.22);
  expect(four).toBeLessThan(0.275);
});

test('Wendle Marsh (invented): three left jaws of five in just those three pits, 1/C(5,3) = 1/10: weak alone (DER)', () => {
  expect(fullSetTail(5, [3, 3], 3)).toMatchObject({ numerator: 1n, denominator: 10n, value: 0.1 });
});
