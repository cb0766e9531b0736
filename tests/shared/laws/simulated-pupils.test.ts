import { describe, expect, test } from 'vitest';
import { scoreSort, type SortActivity, type SortPlay } from '../../../shared/activities/scorers.ts';
import { pick, stream, uniform, type Stream } from '../../../shared/chance/index.ts';
import { demoActivities } from '../../demo.ts';
import { mean } from './laws.ts';

const PLAYS = 10_000;
const PUPILS = 2000;
const SKILLS = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1] as const;

const sorts = demoActivities.flatMap(({ lesson, activity }) =>
  activity.kind === 'sort' ? [{ lesson, activity }] : [],
);

const place = (
  activity: SortActivity,
  trayFor: (find: SortActivity['finds'][number]) => string,
): SortPlay => ({
  activity: activity.id,
  placed: Object.fromEntries(activity.finds.map((find) => [find.id, trayFor(find)])),
});

/** Scores of plays; a sort always lets a play be scored, so a null would be a fault. */
function scores(
  activity: SortActivity,
  plays: number,
  playOf: (chance: Stream) => SortPlay,
): readonly number[] {
  const chance = stream(`pupils/${activity.id}`);
  return Array.from({ length: plays }, () => scoreSort(activity, playOf(chance)).score ?? Number.NaN);
}

describe.each(sorts.filter(({ activity }) => !activity.ownTrays))('$lesson, $activity.id', ({ activity }) => {
  const trays = activity.trays.map(({ id }) => id);

  test('10,000 random placings score 0 on average, within 0.02', () => {
    const all = scores(activity, PLAYS, (chance) => place(activity, () => pick(chance, trays)));
    expect(Math.abs(mean(all))).toBeLessThan(0.02);
  });

  test.each(trays)('everything in the tray %s scores no more than 0.05', (tray) => {
    const { score } = scoreSort(
      activity,
      place(activity, () => tray),
    );
    expect(score).not.toBeNull();
    expect(score).toBeLessThanOrEqual(0.05);
  });

  test('a pupil of more skill scores more: every tenth counts', () => {
    const averages = SKILLS.map((skill) =>
      mean(
        scores(activity, PUPILS, (chance) =>
          place(activity, ({ homes }) => {
            const guessed = pick(chance, trays);
            return uniform(chance) < skill ? (homes[0]?.tray ?? guessed) : guessed;
          }),
        ),
      ),
    );
    for (const [index, average] of averages.entries()) {
      if (index > 0) expect(average).toBeGreaterThan((averages[index - 1] ?? 0) + 0.02);
    }
    expect(averages.at(-1)).toBeCloseTo(1, 9);
  });
});

describe.each(sorts.filter(({ activity }) => activity.ownTrays))(
  '$lesson, $activity.id, trays of one’s own',
  ({ activity }) => {
    test.each([2, 3, 5])('1,000 random groupings into %i trays score 0 on average, within 0.02', (count) => {
      const trays = Array.from({ length: count }, (_, index) => `tray ${index}`);
      const all = scores(activity, 1000, (chance) => place(activity, () => pick(chance, trays)));
      expect(Math.abs(mean(all))).toBeLessThan(0.02);
    });

    test('everything in one tray, and every find in a tray of its own, score no more than 0.05', () => {
      expect(
        scoreSort(
          activity,
          place(activity, () => 'all'),
        ).score ?? 0,
      ).toBeLessThanOrEqual(0.05);
      expect(
        scoreSort(
          activity,
          place(activity, ({ id }) => id),
        ).score ?? 0,
      ).toBeLessThanOrEqual(0.05);
    });

    test('a pupil who follows one attribute more often scores more', () => {
      const averages = [0, 0.25, 0.5, 0.75, 1].map((skill) =>
        mean(
          scores(activity, 200, (chance) =>
            place(activity, ({ attributes }) => {
              const guessed = pick(chance, ['flint', 'pottery', 'bone']);
              return uniform(chance) < skill ? attributes[activity.by] : guessed;
            }),
          ),
        ),
      );
      expect(averages.toSorted((a, b) => a - b)).toEqual(averages);
      expect(averages.at(-1)).toBeCloseTo(1, 9);
    });
  },
);
