import { expect, test } from 'vitest';
import { lineMap } from '../../../shared/lesson/index.ts';

test.each([
  { name: 'the start', text: 'ab\ncd', at: 0, expected: { line: 1, column: 1, offset: 0 } },
  { name: 'after a line feed', text: 'ab\ncd', at: 3, expected: { line: 2, column: 1, offset: 3 } },
  { name: 'at the line feed itself', text: 'ab\ncd', at: 2, expected: { line: 1, column: 3, offset: 2 } },
  { name: 'after a Windows line end', text: 'ab\r\ncd', at: 4, expected: { line: 2, column: 1, offset: 4 } },
  { name: 'inside a Windows line end', text: 'ab\r\ncd', at: 3, expected: { line: 1, column: 3, offset: 2 } },
  {
    name: 'after a lone carriage return',
    text: 'ab\rcd',
    at: 3,
    expected: { line: 2, column: 1, offset: 3 },
  },
  { name: 'past the end', text: 'ab', at: 99, expected: { line: 1, column: 3, offset: 2 } },
  { name: 'before the start', text: 'ab', at: -1, expected: { line: 1, column: 1, offset: 0 } },
  { name: 'in an empty text', text: '', at: 0, expected: { line: 1, column: 1, offset: 0 } },
  { name: 'after a final line feed', text: 'ab\n', at: 3, expected: { line: 2, column: 1, offset: 3 } },
  {
    name: 'after a tab, which is one column',
    text: '\tab',
    at: 1,
    expected: { line: 1, column: 2, offset: 1 },
  },
  {
    name: 'after a picture sign of two units',
    text: '🦴b',
    at: 2,
    expected: { line: 1, column: 3, offset: 2 },
  },
])('a point $name', ({ text, at, expected }) => {
  expect(lineMap(text).at(at)).toEqual(expected);
});

test('a line comes without its ending, and a line that is not there is empty', () => {
  const lines = lineMap('ab\r\ncd\ref\n');
  expect([0, 1, 2, 3, 4, 5].map(lines.line)).toEqual(['', 'ab', 'cd', 'ef', '', '']);
});
