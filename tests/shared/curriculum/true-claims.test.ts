import { describe, expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';
import { claimOf, errorsOf, estimate, lessonOf, TWO_PITS, vouched } from './one-block-lessons.ts';

describe('claims that are so', () => {
  test('all of the demo lessons are accepted', () => {
    const claims = demoLessons.flatMap(({ id, file, text }) => {
      const compiled = compileLesson(file, text, demoLibrary, id);
      expect(compiled.problems.filter(({ code }) => code.startsWith('claim-'))).toEqual([]);
      expect(compiled.plan?.claims.length).toBe(compiled.claims.length);
      return compiled.claims;
    });
    expect(claims.length).toBeGreaterThanOrEqual(21);
    expect(claims.filter(({ fault, evidence }) => fault === null && evidence.length > 0)).toHaveLength(
      claims.length,
    );
  });

  test('what only the older band shows is earned, and says by whom', () => {
    const text = lessonOf(estimate('{ 7-9: choose, 9-11: number }'), '[7-9, 9-11]', [
      claimOf('4.OA.A.3', 'touched'),
    ]);
    expect(errorsOf(text, demoLibrary).errors).toEqual([]);
    // First level is held by ages 5-7 and 7-9; fractions come with the second.
    const fractions = lessonOf(vouched(TWO_PITS, 'fraction-of-pit'), '[5-7, 7-9]', [
      claimOf('MNU 1-07a', 'practised'),
    ]);
    const { plan, errors } = errorsOf(fractions, demoLibrary);
    expect(errors).toEqual([]);
    expect(plan?.claims.map(({ evidence }) => evidence.map(({ bands }) => bands))).toEqual([[['7-9']]]);
    // Where all that meet the stage show it, no band is named.
    const alone = lessonOf(vouched(TWO_PITS, 'fraction-of-pit'), '[7-9]', [
      claimOf('MNU 1-07a', 'practised'),
    ]);
    expect(errorsOf(alone, demoLibrary).plan?.claims[0]?.evidence[0]?.bands).toBeUndefined();
  });
});
