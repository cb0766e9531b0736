import { expect, test } from 'vitest';
import { isRobinsonForm } from '../../shared/assemblage/index.ts';

test('Robinson 1951: likeness never rises when moving away from the diagonal (DER, definition)', () => {
  expect(isRobinsonForm([[200, 150, 80], [150, 200, 120], [80, 120, 200]])).toBe(true); // prettier-ignore
});

test('Robinson 1951: the same with the last two pits changed over is not in the form (DER, definition)', () => {
  expect(isRobinsonForm([[200, 80, 150], [80, 200, 120], [150, 120, 200]])).toBe(false); // prettier-ignore
});
