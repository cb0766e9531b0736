import { expect, test } from 'vitest';
import { make } from './model.ts';

test('De Belemniet, page on flint axes (RF): nodule to half-finished axe within a quarter of an hour', () => {
  expect(make({ form: 'small-plain', skill: 'experienced' }).knappingMinutes.middle).toBeLessThanOrEqual(15);
});
