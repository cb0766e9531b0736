import { expect, test } from 'vitest';
import { grams, hours, millimetres, minutes, toHours, toMinutes } from '../../shared/units.ts';

test.each([
  { name: 'hours', make: hours },
  { name: 'minutes', make: minutes },
  { name: 'millimetres', make: millimetres },
  { name: 'grams', make: grams },
])('$name are finite and from 0 up, or it throws with the value', ({ name, make }) => {
  expect(make(0)).toBe(0);
  expect(make(1.5)).toBe(1.5);
  for (const value of [-0.1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => make(value)).toThrow(
      new RangeError(`${name} must be a finite number from 0 up, received ${value}`),
    );
  }
});

test('two hours are 120 minutes, and 90 minutes an hour and a half', () => {
  expect(toMinutes(hours(2))).toBe(120);
  expect(toHours(minutes(90))).toBe(1.5);
});
