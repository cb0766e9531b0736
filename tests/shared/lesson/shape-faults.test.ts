import { expect, test } from 'vitest';
import { problemsOf, BLOCK, HEAD } from './lesson-text.ts';

const said = (text: string): readonly string[] =>
  problemsOf(text).map(({ code, received, mend }) => `${code}: ${received}: ${mend}`);

const block = (from: string, to: string): string => {
  expect(BLOCK).toContain(from);
  return HEAD + BLOCK.replace(from, to);
};

test.each([
  {
    name: 'a misspelt key that is needed is told once',
    text: block('minutes:', 'minuts:'),
    expected: ['key-unknown: "minuts": write "minutes"'],
  },
  {
    name: 'a misspelt key in a tray is told at the key',
    text: block('[carved, ', '[{ name: carved, hold: [carved] }, '),
    expected: ['key-unknown: "hold": write "holds"'],
  },
  {
    name: 'a key that is nothing like any',
    text: block('minutes: 8', 'minutes: 8\ncolour: red'),
    expected: [
      'key-unknown: "colour": remove the line, or write one of 10 known words, listed in the help page',
    ],
  },
  {
    name: 'a missing key is told with its words',
    text: block('by: made-by\n', ''),
    expected: ['key-missing: nothing: add a line "by: …" here'],
  },
  {
    name: 'a missing number',
    text: block('minutes: 8\n', ''),
    expected: ['key-missing: nothing: add a line "minutes: …" here'],
  },
  {
    name: 'a missing list',
    text: block('trays: [carved, ground, fired, not made]\n', ''),
    expected: ['key-missing: nothing: add a line "trays: …" here'],
  },
  {
    name: 'our for ours',
    text: block('[carved, ground, fired, not made]', 'our'),
    expected: ['word-unknown: "our": write "ours"'],
  },
  {
    name: 'too few trays',
    text: block('[carved, ground, fired, not made]', '[carved]'),
    expected: ['value-unfit: a list of 1: write at least 2'],
  },
  {
    name: 'a number for a title',
    text: block('title: Who made this?', 'title: 3'),
    expected: ['value-unfit: "3": write text'],
  },
  {
    name: 'a fraction of a minute',
    text: block('minutes: 8', 'minutes: 8.5'),
    expected: ['value-unfit: "8.5": write a whole number'],
  },
  {
    name: 'no minutes at all',
    text: block('minutes: 8', 'minutes: 0'),
    expected: ['value-unfit: "0": write at least 1'],
  },
  {
    name: 'an empty value',
    text: block('minutes: 8', 'minutes:'),
    expected: ['value-unfit: an empty value: write a number'],
  },
  {
    name: 'a head that is a list',
    text: HEAD.replace(/---\n[\s\S]*---\n/, '---\n- a\n---\n'),
    expected: ['value-unfit: a list of 1: write keys and values'],
  },
  {
    name: 'a title over 120 characters',
    text: block('title: Who made this?', `title: ${'a'.repeat(121)}`),
    expected: [`value-unfit: "${'a'.repeat(57)}…": write at most 120 characters`],
  },
  {
    name: 'a band that is near one',
    text: HEAD.replace('[7-9]', '[7-8]') + BLOCK,
    expected: ['word-unknown: "7-8": write "7-9"'],
  },
  {
    name: 'no bands',
    text: HEAD.replace('[7-9]', '[]') + BLOCK,
    expected: ['value-unfit: an empty list: write at least 1'],
  },
])('$name', ({ text, expected }) => {
  expect(said(text)).toEqual(expected);
});
