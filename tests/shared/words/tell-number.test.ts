import { expect, test } from 'vitest';
import { tellNumber } from '../../../shared/words/index.ts';

test.each([
  { value: 26.34, digits: 2, told: '26' },
  { value: 9.27, digits: 2, told: '9.3' },
  { value: 1234, digits: 2, told: '1,200' },
  { value: 1234.5, digits: 6, told: '1,234.5' },
  { value: 0.0123, digits: 2, told: '0.012' },
  { value: 1_234_567, digits: 7, told: '1,234,567' },
  { value: 100, digits: 2, told: '100' },
])('$value to $digits digits is $told', ({ value, digits, told }) => {
  expect(tellNumber(value, digits)).toBe(told);
});
