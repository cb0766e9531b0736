import {
  guessPlay,
  isScored,
  recordPlay,
  samplePlay,
  score,
  sheetsOf,
  tellPlay,
  type Activity,
  type PlayOf,
  type Score,
  type ScoredName,
  type Sheet,
  type Told,
  type UnscoredName,
} from '../../../shared/activities/index.ts';
import { stream } from '../../../shared/chance/index.ts';

/** A scored kind seen from outside, with one of its activities: all that a law may use. */
export interface Subject {
  readonly record: () => unknown;
  readonly guess: (seed: string) => unknown;
  readonly score: (play: unknown) => Score;
}

/** A kind without a right answer, seen from outside. */
export interface Unscored {
  readonly sample: (seed: string) => unknown;
  readonly tell: (play: unknown) => Told;
}

/** An activity that can be scored; null where there is no right answer. */
export const subjectOf = (activity: Activity): Subject | null =>
  isScored(activity)
    ? {
        record: () => recordPlay(activity),
        guess: (seed) => guessPlay(activity, stream(seed)),
        // The play was made by this activity's own kind.
        score: (play) => score(activity, play as PlayOf<ScoredName>),
      }
    : null;

/** An activity without a right answer; null where it can be scored. */
export const unscoredOf = (activity: Activity): Unscored | null =>
  isScored(activity)
    ? null
    : {
        sample: (seed) => samplePlay(activity, stream(seed)),
        // The play was made by this activity's own kind.
        tell: (play) => tellPlay(activity, play as PlayOf<UnscoredName>),
      };

/** What an activity of any kind prints. */
export const sheetsFor = (activity: Activity): readonly Sheet[] => sheetsOf(activity);

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
