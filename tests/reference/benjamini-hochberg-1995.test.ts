import { expect, test } from 'vitest';
import { benjaminiHochberg, holm } from '../../shared/assemblage/index.ts';

// The fifteen chances of their heart-attack trial (section 4.2), from memory (FM).
// prettier-ignore
const chances = [0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1];

test('Benjamini & Hochberg 1995, section 4.2: four of fifteen stand at 5 %, three by the family-wise rule (FM)', () => {
  expect(benjaminiHochberg(chances).filter((chance) => chance <= 0.05)).toHaveLength(4);
  expect(holm(chances).filter((chance) => chance <= 0.05)).toHaveLength(3);
});

// scipy.stats.false_discovery_control 1.17 on the same values (DER).
test('Benjamini & Hochberg 1995: corrected chances as scipy gives them (DER)', () => {
  const corrected = benjaminiHochberg(chances);
  // prettier-ignore
  const expected = [0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.063857, 0.063857, 0.0645, 0.0765, 0.486, 0.581182, 0.714875, 0.753231, 0.813214, 1.0];
  for (const [place, value] of expected.entries()) expect(corrected[place]).toBeCloseTo(value, 6);
});

// By hand: 4 × 0.005; 3 × 0.01; 2 × 0.03; then no less than the one before.
test('Holm 1979 by hand on four chances (DER)', () => {
  const corrected = holm([0.01, 0.04, 0.03, 0.005]);
  for (const [place, value] of [0.03, 0.06, 0.06, 0.02].entries())
    expect(corrected[place]).toBeCloseTo(value, 12);
});
