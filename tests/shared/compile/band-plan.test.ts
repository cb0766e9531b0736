import { describe, expect, test } from 'vitest';
import { bandPlan, compileLesson, type Plan } from '../../../shared/compile/index.ts';
import { isScored, recordPlay, score } from '../../../shared/activities/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

const plans: readonly Plan[] = demoLessons.flatMap(({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  return plan === null ? [] : [plan];
});
const hours = plans.find(({ title }) => title === 'The hours in an axe');

describe('a plan as one band meets it', () => {
  test('asks what that band is asked, and nothing else', () => {
    const asks = (band: '7-9' | '9-11') =>
      hours === undefined
        ? []
        : bandPlan(hours, band).activities.map((activity) => ('asks' in activity ? activity.asks : []));
    const choose = (band: string) => [{ how: 'choose', bands: [band] }];
    expect(asks('7-9')).toEqual([choose('7-9'), choose('7-9')]);
    expect(asks('9-11')).toEqual([choose('9-11'), [{ how: 'number', bands: ['9-11'] }]]);
  });

  test('has the same activities, and their record still scores 1', () => {
    for (const plan of plans) {
      for (const band of plan.bands) {
        const own = bandPlan(plan, band);
        expect(own.bands).toEqual([band]);
        expect(own.activities.map(({ id }) => id)).toEqual(plan.activities.map(({ id }) => id));
        for (const activity of own.activities) {
          if (isScored(activity)) expect(score(activity, recordPlay(activity)).score ?? 1).toBeCloseTo(1, 9);
        }
      }
    }
  });

  test('is refused for a band the lesson is not for', () => {
    expect(() => hours && bandPlan(hours, '14-16')).toThrow(RangeError);
  });
});
