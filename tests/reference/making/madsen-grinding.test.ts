import { expect, test } from 'vitest';
import { rubbingHours } from '../../../shared/making/grinding.ts';
import { figures, head } from './model.ts';

test('Museum of Stone Tools on Madsen’s 1983 trials (DER): weighted grinding takes three people, so 3/2.5 the person-hours at the assumed factor', () => {
  const work = (grinder: string): number =>
    rubbingHours(figures, head({ grinder }), 10) * head({ grinder }).grinder.people;
  expect(work('weighted-pull') / work('wet-sandstone')).toBeCloseTo(1.2, 9);
});
