import { expect, test } from 'vitest';
import { nearest } from '../../../shared/lesson/index.ts';

const TRAYS = ['flaked', 'ground', 'carved', 'not made'];

test.each([
  { written: 'grond', expected: 'ground', name: 'a letter left out' },
  { written: 'grounnd', expected: 'ground', name: 'a letter too many' },
  { written: 'gruond', expected: 'ground', name: 'two neighbours swapped' },
  { written: 'graund', expected: 'ground', name: 'a letter changed' },
  { written: 'GROUND', expected: 'ground', name: 'capitals' },
  { written: 'Not_Made', expected: 'not made', name: 'another mark between words' },
  { written: 'not-made', expected: 'not made', name: 'a hyphen' },
  { written: 'pottery', expected: null, name: 'another word altogether' },
  { written: '', expected: null, name: 'nothing' },
  { written: 'x'.repeat(100_000), expected: null, name: 'a very long word' },
])('$name: $expected', ({ written, expected }) => {
  expect(nearest(written, TRAYS)).toBe(expected);
});

test('nothing is near where nothing is known', () => {
  expect(nearest('ground', [])).toBeNull();
});

test('of two as near, the first is taken', () => {
  expect(nearest('cat', ['bat', 'hat'])).toBe('bat');
});
