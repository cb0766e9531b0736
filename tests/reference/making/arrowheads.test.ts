import { expect, test } from 'vitest';
import { evidence } from './model.ts';

test('woodlands film on a leaf-shaped arrowhead (RF): about 20 an hour, so 3 minutes each', () => {
  const arrowhead = evidence.otherFigures.find(({ id }) => id === 'arrowhead-expert');
  expect(arrowhead?.unit).toBe('min');
  expect(60 / (arrowhead?.middle ?? Number.NaN)).toBe(20);
});
