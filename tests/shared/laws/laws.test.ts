import { describe, expect, test } from 'vitest';
import { kindNames } from '../../../shared/activities/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { demoActivities, demoLessons, demoLibrary } from '../../demo.ts';
import { guessedScores, keysReversed, mean, subjectOf } from './laws.ts';

/** Kinds that say nothing of a play: there is no right answer to agree with. */
const UNSCORED: ReadonlySet<string> = new Set(['handle', 'talk']);

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

describe.each(demoActivities)('$lesson, $activity.id ($activity.kind)', ({ lesson, activity }) => {
  const subject = subjectOf(activity);
  const isScored = !UNSCORED.has(activity.kind);

  test('a plan is plain JSON: written and read again, it is the same', () => {
    expect(JSON.parse(JSON.stringify(activity))).toEqual(activity);
    expect(
      subjectOf(JSON.parse(JSON.stringify(activity)) as typeof activity).score(subject.record()),
    ).toEqual(subject.score(subject.record()));
  });

  test('the record scores 1', () => {
    const { score } = subject.score(subject.record());
    if (isScored) expect(score).toBeCloseTo(1, 9);
    else expect(score).toBeNull();
  });

  test('guessing averages 0 within 0.02, and no guess scores above 1', () => {
    const scores = guessedScores(subject, `${lesson}/${activity.id}`, GUESSES);
    if (!isScored) {
      expect(scores).toEqual([]);
      return;
    }
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
    if (isScored) {
      expect(
        new Set(['1', '2', '3', '4', '5'].map((seed) => JSON.stringify(subject.guess(seed)))).size,
      ).toBeGreaterThan(1);
    }
  });

  test('it can be printed, and the answers are on a sheet of their own', () => {
    const sheets = subject.sheets();
    expect(sheets.length).toBeGreaterThan(0);
    expect(JSON.parse(JSON.stringify(sheets))).toEqual(sheets);
  });

  test('neither scoring nor printing changes the activity', () => {
    const before = JSON.stringify(activity);
    subject.score(subject.guess('1'));
    subject.sheets();
    expect(JSON.stringify(activity)).toBe(before);
  });
});
