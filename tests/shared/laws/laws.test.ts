import { describe, expect, test } from 'vitest';
import { isScored, kindNames, playSchemas, score } from '../../../shared/activities/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { demoActivities, demoLessons, demoLibrary } from '../../demo.ts';
import { guessedScores, keysReversed, mean, sheetsFor, subjectOf, unscoredOf } from './laws.ts';

const GUESSES = 2000;

test('every kind has an activity in the demo lessons, so that these laws see it', () => {
  expect([...new Set(demoActivities.map(({ activity }) => activity.kind))].toSorted()).toEqual([
    ...kindNames,
  ]);
});

test.each(demoLessons)('$id compiles without a problem', ({ id, file, text }) => {
  expect(compileLesson(file, text, demoLibrary, id).problems).toEqual([]);
});

test.each(demoLessons)(
  '$id: the same seed gives the same bytes, another seed other bytes',
  ({ file, text }) => {
    const bytes = (seed: string): string => JSON.stringify(compileLesson(file, text, demoLibrary, seed).plan);
    expect(bytes('a')).toBe(bytes('a'));
    expect(bytes('a').replaceAll('"a', '"b')).not.toBe(bytes('b'));
  },
);

const scored = demoActivities.flatMap(({ lesson, activity }) => {
  const subject = subjectOf(activity);
  return subject === null ? [] : [{ lesson, activity, subject }];
});
const unscored = demoActivities.flatMap(({ lesson, activity }) => {
  const subject = unscoredOf(activity);
  return subject === null ? [] : [{ lesson, activity, subject }];
});

test('both sorts of kind are held to their laws', () => {
  const kinds = (rows: typeof demoActivities): ReadonlySet<string> =>
    new Set(rows.map(({ activity }) => activity.kind));
  expect(kinds(scored).size).toBeGreaterThan(1);
  expect(kinds(unscored).size).toBeGreaterThan(1);
  expect([...kinds(scored), ...kinds(unscored)].toSorted()).toEqual([...kindNames]);
});

describe.each(demoActivities)('$lesson, $activity.id ($activity.kind)', ({ activity }) => {
  test('a plan is plain JSON: written and read again, it is the same', () => {
    expect(JSON.parse(JSON.stringify(activity))).toEqual(activity);
  });

  test('it can be printed, its sheets are plain JSON, and printing does not change it', () => {
    const before = JSON.stringify(activity);
    const sheets = sheetsFor(activity);
    expect(sheets.length).toBeGreaterThan(0);
    expect(JSON.parse(JSON.stringify(sheets))).toEqual(sheets);
    expect(JSON.stringify(activity)).toBe(before);
  });

  test('its plays have a shape, and what is no play of it is refused', () => {
    const schema = playSchemas[activity.kind];
    const plays = [
      ...(subjectOf(activity) === null
        ? []
        : [subjectOf(activity)?.record(), subjectOf(activity)?.guess('1')]),
      ...(unscoredOf(activity) === null ? [] : [unscoredOf(activity)?.sample('1')]),
    ];
    expect(plays.length).toBeGreaterThan(0);
    for (const play of plays) expect(schema.safeParse(play).success).toBe(true);
    expect(schema.safeParse({ activity: activity.id, marks: 10 }).success).toBe(false);
  });
});

describe.each(scored)('scored: $lesson, $activity.id ($activity.kind)', ({ lesson, activity, subject }) => {
  test('the record scores 1, before and after the plan was written and read', () => {
    expect(subject.score(subject.record()).score).toBeCloseTo(1, 9);
    const read = subjectOf(JSON.parse(JSON.stringify(activity)) as typeof activity);
    expect(read?.score(subject.record())).toEqual(subject.score(subject.record()));
  });

  test('guessing averages 0 within 0.02, and no guess scores above 1', () => {
    const scores = guessedScores(subject, `${lesson}/${activity.id}`, GUESSES);
    expect(scores.length).toBeGreaterThan(GUESSES * 0.9);
    expect(Math.abs(mean(scores))).toBeLessThan(0.02);
    expect(Math.max(...scores)).toBeLessThanOrEqual(1 + 1e-9);
  });

  test('the order of keys in a play does not matter', () => {
    for (const play of [subject.record(), subject.guess('1'), subject.guess('2')]) {
      expect(subject.score(keysReversed(play))).toEqual(subject.score(play));
    }
  });

  test('the same play scores the same, to the byte', () => {
    const play = subject.guess('again');
    expect(JSON.stringify(subject.score(play))).toBe(JSON.stringify(subject.score(play)));
  });

  test('the same guess comes from the same seed, another from another', () => {
    expect(subject.guess('1')).toEqual(subject.guess('1'));
    expect(
      new Set(['1', '2', '3', '4', '5'].map((seed) => JSON.stringify(subject.guess(seed)))).size,
    ).toBeGreaterThan(1);
  });

  test('scoring does not change the activity', () => {
    const before = JSON.stringify(activity);
    subject.score(subject.guess('1'));
    expect(JSON.stringify(activity)).toBe(before);
  });
});

/** Every key of plain data, however deep. */
const keysIn = (data: unknown): readonly string[] =>
  typeof data === 'object' && data !== null
    ? Object.entries(data).flatMap(([key, value]) => [
        ...(Array.isArray(data) ? [] : [key]),
        ...keysIn(value),
      ])
    : [];

describe.each(unscored)(
  'no right answer: $lesson, $activity.id ($activity.kind)',
  ({ activity, subject }) => {
    const plays = Array.from({ length: 200 }, (_, seed) => subject.sample(`${seed}`));

    test('nothing that is told, printed or planned says score, right or wrong', () => {
      const told = plays.map((play) => subject.tell(play));
      const merit = /^(?:score|guess|record|right|correct|wrong|best|mark|answer|homes|par$)/i;
      expect(keysIn([activity, told, sheetsFor(activity)]).filter((key) => merit.test(key))).toEqual([]);
    });

    test('it cannot be scored, whoever asks', () => {
      expect(isScored(activity)).toBe(false);
      // @ts-expect-error What has no right answer is not handed to a scorer; one who does it all the same gets nothing.
      expect(() => score(activity, plays[0])).toThrow(TypeError);
    });

    test('what is told is plain JSON, the same for the same play, in whatever order its keys stand', () => {
      for (const play of plays) {
        const told = subject.tell(play);
        expect(JSON.parse(JSON.stringify(told))).toEqual(told);
        expect(JSON.stringify(subject.tell(keysReversed(play)))).toBe(JSON.stringify(told));
      }
    });

    test('different plays are told differently, and an empty one is told', () => {
      expect(new Set(plays.map((play) => JSON.stringify(subject.tell(play)))).size).toBeGreaterThan(3);
      const nothing = Object.fromEntries(
        Object.keys(plays[0] ?? {}).map((key) => [key, key === 'activity' ? activity.id : {}]),
      );
      expect(playSchemas[activity.kind].safeParse(nothing).success).toBe(true);
      expect(JSON.stringify(subject.tell(nothing))).not.toBe(JSON.stringify(subject.tell(plays[0])));
    });

    test('telling does not change the activity', () => {
      const before = JSON.stringify(activity);
      for (const play of plays) subject.tell(play);
      expect(JSON.stringify(activity)).toBe(before);
    });
  },
);
