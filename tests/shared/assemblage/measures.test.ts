import { array, assert, nat, property } from 'fast-check';
import { expect, test } from 'vitest';
import {
  brainerdRobinson,
  countFinds,
  jaccard,
  kindsOfTwo,
  likenessMatrix,
  overlap,
  pitsWithKind,
  presence,
  shannon,
  simpson,
  sorensenDice,
} from '../../../shared/assemblage/index.ts';

const finds = [
  { pit: 'P3', kind: 'pig jaw' },
  { pit: 'P3', kind: 'flake', count: 4 },
  { pit: 'P3', kind: 'flake' },
  { pit: 'P4', kind: 'flake', count: 2 },
  { pit: 'P4', kind: 'hazelnut shell', count: 31 },
];

test('finds are counted by pit and kind, pieces and all', () => {
  const counts = countFinds(finds);
  expect(counts).toEqual({ pits: ['P3', 'P4'], kinds: ['pig jaw', 'flake', 'hazelnut shell'], rows: [[1, 5, 0], [0, 2, 31]] }); // prettier-ignore
  expect(presence(counts).rows).toEqual([[1, 1, 0], [0, 1, 1]]); // prettier-ignore
  expect(pitsWithKind(counts)).toEqual([1, 2, 1]);
});

test('an empty pit keeps its row; a find from nowhere is a slip of the caller', () => {
  expect(countFinds(finds, ['P3', 'P4', 'P9']).rows[2]).toEqual([0, 0, 0]);
  expect(() => countFinds(finds, ['P3'])).toThrow(/flake from P4/);
});

test('what lies in both, only here, only there, and in neither', () => {
  const counts = countFinds([...finds, { pit: 'P6', kind: 'cordage' }]);
  expect(kindsOfTwo(counts, 'P3', 'P4')).toEqual({
    both: ['flake'],
    onlyFirst: ['pig jaw'],
    onlySecond: ['hazelnut shell'],
    neither: ['cordage'],
  });
  expect(() => kindsOfTwo(counts, 'P3', 'P7')).toThrow(/P7/);
});

test('an empty pit has no likeness to any, not even itself', () => {
  const counts = countFinds(finds, ['P3', 'P9', 'P4']);
  expect(likenessMatrix(counts, 'brainerd-robinson')[1]).toEqual([null, null, null]);
  expect(likenessMatrix(counts, 'jaccard')[1]).toEqual([0, null, 0]);
});

test('three finds may be as alike as can be to three hundred', () => {
  expect(brainerdRobinson([1, 2], [100, 200]).value).toBeCloseTo(200, 9);
});

test.each([
  { name: 'no finds', counts: [0, 0], nats: 'empty', evenness: 'empty', dominance: 'too-few' },
  { name: 'one find', counts: [1], nats: 0, evenness: 'one-kind', dominance: 'too-few' },
  { name: 'one kind', counts: [7, 0], nats: 0, evenness: 'one-kind', dominance: 1 },
  { name: 'all different', counts: [1, 1], nats: Math.LN2, evenness: 1, dominance: 0 },
])('diversity of $name', ({ counts, nats, evenness, dominance }) => {
  const show = (measure: { value: number | null; reason?: string }): unknown =>
    measure.value ?? measure.reason;
  expect(show(shannon(counts).nats)).toBe(nats);
  expect(show(shannon(counts).evenness)).toBe(evenness);
  expect(show(simpson(counts).dominance)).toBe(dominance);
});

test('with no kind twice there is no reciprocal of Simpson', () => {
  expect(simpson([1, 1, 1]).reciprocal).toEqual({ value: null, reason: 'none-repeated' });
});

const row = array(nat(5), { minLength: 6, maxLength: 6 });

test('Dice is 2J / (1 + J), and all likenesses are the same both ways round', () => {
  assert(
    property(row, row, (first, second) => {
      const j = jaccard(overlap(first, second)).value;
      const dice = sorensenDice(overlap(first, second)).value;
      if (j === null) expect(dice).toBeNull();
      else expect(dice).toBeCloseTo((2 * j) / (1 + j), 12);
      expect(jaccard(overlap(second, first)).value).toBe(j);
      const alike = brainerdRobinson(first, second).value;
      expect(brainerdRobinson(second, first).value).toBe(alike);
      if (alike !== null) {
        expect(alike).toBeGreaterThanOrEqual(-1e-9);
        expect(alike).toBeLessThanOrEqual(200 + 1e-9);
      }
    }),
  );
});
