import { expect, test } from 'vitest';
import { make, off } from './model.ts';

test('Portable Antiquities Scheme, complete polished axe from Cambridgeshire (RF): 315 g, within 15 per cent from its size', () => {
  const { massGrams } = make({ lengthMm: 116.08, widthMm: 60.28, thicknessMm: 33, stone: 'fine-tuff' });
  expect(off(massGrams.middle, 315)).toBeLessThan(0.15);
  expect(off(massGrams.middle, 355.6)).toBeLessThan(0.01);
});
