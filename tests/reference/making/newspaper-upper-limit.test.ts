import { expect, test } from 'vitest';
import { make } from './model.ts';

test('The Times, "How to craft a flint axe head" (RF): up to 60 hours lies between the middle and the 95 per cent end of a long polished axe', () => {
  const { grindingHours } = make({ form: 'long-oval', preform: 'good', extent: 'full', finish: 'mirror' });
  expect(grindingHours.middle).toBeLessThan(60);
  expect(grindingHours.high).toBeGreaterThan(60);
});
