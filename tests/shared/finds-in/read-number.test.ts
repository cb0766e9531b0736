import { expect, test } from 'vitest';
import { isFormula, readNumber } from '../../../shared/finds-in/read-number.ts';

test.each([
  { text: '46', comma: false, value: 46, unit: null, isRough: false, other: null },
  { text: '4.6 cm', comma: false, value: 4.6, unit: 'cm', isRough: false, other: null },
  { text: '0.41kg', comma: false, value: 0.41, unit: 'kg', isRough: false, other: null },
  { text: '18,5', comma: true, value: 18.5, unit: null, isRough: false, other: null },
  { text: '18,5 g', comma: false, value: 18.5, unit: 'g', isRough: false, other: null },
  { text: 'c. 30', comma: false, value: 30, unit: null, isRough: true, other: null },
  { text: 'ca 30 mm', comma: false, value: 30, unit: 'mm', isRough: true, other: null },
  { text: '~30', comma: false, value: 30, unit: null, isRough: true, other: null },
  { text: '30?', comma: false, value: 30, unit: null, isRough: true, other: null },
  { text: '1,234', comma: false, value: 1234, unit: null, isRough: false, other: 1.234 },
  { text: '1.234', comma: true, value: 1234, unit: null, isRough: false, other: 1.234 },
  { text: '1.234', comma: false, value: 1.234, unit: null, isRough: false, other: null },
  { text: '1.234,5', comma: true, value: 1234.5, unit: null, isRough: false, other: null },
  { text: '1,234,567', comma: false, value: 1234567, unit: null, isRough: false, other: null },
  { text: "1'234.5", comma: false, value: 1234.5, unit: null, isRough: false, other: null },
  { text: '2"', comma: false, value: 2, unit: 'in', isRough: false, other: null },
  { text: '.5', comma: false, value: 0.5, unit: null, isRough: false, other: null },
] as const)('$text', ({ text, comma, ...expected }) => {
  expect(readNumber(text, comma)).toEqual({ kind: 'number', ...expected });
});

test.each([
  { text: '30-35', low: 30, high: 35, unit: null },
  { text: '3.5 – 4 cm', low: 3.5, high: 4, unit: 'cm' },
  { text: '40 to 30 mm', low: 30, high: 40, unit: 'mm' },
] as const)('$text is a range', ({ text, ...expected }) => {
  expect(readNumber(text, false)).toEqual({ kind: 'range', ...expected });
});

test.each(['', '-', 'n/a', 'light', '12 stone', '1e5', '--3', '0x10', '12 mm wide', '9'.repeat(60)])(
  '"%s" is text',
  (text) => {
    expect(readNumber(text, false)).toEqual({ kind: 'text' });
  },
);

test.each(['=A1', ' =SUM(A1:A3)', '@x', '+A1', '-SUM(A1)', '#REF!', '#N/A', '#DIV/0!', '#VALUE!'])(
  '"%s" is a formula or its error',
  (text) => {
    expect(isFormula(text)).toBe(true);
  },
);

test.each(['-5', '+5', '- two flakes', '#12', 'A1', '5=5', '-', '+'])('"%s" is no formula', (text) => {
  expect(isFormula(text)).toBe(false);
});
