import { expect, test } from 'vitest';
import { girthCm, groundVolumeCm3, surfaceCm2 } from '../../../shared/making/size.ts';
import { figures, head, make, off } from '../../reference/making/model.ts';

test.each([
  // By hand: ellipse of 5.2 × 2.7 cm, Ramanujan's first approximation: 12.72 cm; 0.8 × 12.72 × 12.
  { name: 'a small oval axe', form: 'small-plain', girth: 12.72, surface: 122.1 },
  // By hand: 2 (7.2 + 3.6) × 0.93 = 20.09 cm; 0.8 × 20.09 × 22.
  { name: 'a four-sided axe', form: 'thin-butted', girth: 20.09, surface: 353.5 },
])('$name: girth $girth cm, surface $surface cm²', ({ form, girth, surface }) => {
  expect(off(girthCm(figures, head({ form })), girth)).toBeLessThan(0.001);
  expect(off(surfaceCm2(figures, head({ form })), surface)).toBeLessThan(0.001);
});

test('a four-sided axe names the figure for its rounded edges; an oval one does not', () => {
  const used = (form: string) => make({ form }).grindingHours.used.map(({ id }) => id);
  expect(used('thin-butted')).toContain('taper-factor-four-sided');
  expect(used('small-plain')).not.toContain('taper-factor-four-sided');
});

test('half ground is half the stone off', () => {
  const volume = (extent: string) => groundVolumeCm3(figures, head({ extent }));
  expect(volume('half') / volume('full')).toBeCloseTo(0.5, 9);
});
