import {
  guessPlay,
  recordPlay,
  score,
  sheetsOf,
  type Activity,
  type PlayOf,
  type Score,
  type Sheet,
} from '../../../shared/activities/index.ts';
import { stream } from '../../../shared/chance/index.ts';

/** A kind seen from outside, with one of its activities: all that a law may use. */
export interface Subject {
  readonly record: () => unknown;
  readonly guess: (seed: string) => unknown;
  readonly score: (play: unknown) => Score;
  readonly sheets: () => readonly Sheet[];
}

/** An activity of the registry, whatever its kind. */
export const subjectOf = (activity: Activity): Subject => ({
  record: () => recordPlay(activity),
  guess: (seed) => guessPlay(activity, stream(seed)),
  // The play was made by this activity's own kind.
  score: (play) => score(activity, play as PlayOf<Activity['kind']>),
  sheets: () => sheetsOf(activity),
});

/** The same plain data with the keys of every object the other way round. */
export function keysReversed(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(keysReversed);
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data)
      .toReversed()
      .map(([key, value]) => [key, keysReversed(value)]),
  );
}

/** The scores of many guesses; those where nothing could be said are left out. */
export const guessedScores = (subject: Subject, seed: string, guesses: number): readonly number[] =>
  Array.from(
    { length: guesses },
    (_, index) => subject.score(subject.guess(`${seed}/${index}`)).score,
  ).filter((value) => value !== null);

export const mean = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0) / values.length;
