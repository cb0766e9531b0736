import { kendallTau } from '../ordering/index.ts';
import { TIE } from './tally.ts';

/** How alike two pits are by the record, and how alike they were said to be, on the same scale; null where nothing was said. */
export interface LikenessGuess {
  readonly record: number;
  readonly said: number | null;
}

export interface LikenessScore {
  /** 1 where the pairs were put in the record's order of likeness, 0 at guessing, -1 where each two were turned round. */
  readonly score: number | null;
  /** Why there is no score: fewer than two pairs of pits, or the record calls all as alike. */
  readonly reason: 'too-few' | 'all-alike' | null;
  readonly guess: number | null;
  /** Twos of pairs whose likeness differs in the record; how many were said the right way round, and the wrong way. */
  readonly twos: number;
  readonly right: number;
  readonly wrong: number;
  /** By pair, what was said less the record; for showing how near, not for the score. */
  readonly apart: readonly (number | null)[];
}

/**
 * Scores guesses of how alike pairs of pits are by their order: which two are more alike, and which less?
 *
 * A number for one pair alone cannot be scored fairly: saying the middle would beat honest guesses. Over several pairs, the
 * middle for all, any one number, and guesses by chance come to exactly 0 on average.
 * Source: Somers 1962, American Sociological Review 27: 799-811 (d, ties in the record left out; ties in what was said count
 * as neither).
 */
export function scoreLikeness(guesses: readonly LikenessGuess[]): LikenessScore {
  const apart = guesses.map(({ record, said }) => (said === null ? null : said - record));
  const near = (value: number): number => Math.round(value / TIE) * TIE;
  const record = kendallTau(
    guesses.map((guess) => near(guess.record)),
    guesses.map((guess) => near(guess.record)),
  );
  const answered = guesses.flatMap(({ record: own, said }) =>
    said === null ? [] : [{ own: near(own), said }],
  );
  const order = kendallTau(
    answered.map(({ own }) => own),
    answered.map(({ said }) => said),
  );
  const twos = record.concordant;
  const [right, wrong] = [order.concordant, order.discordant];
  if (twos === 0) {
    const reason = guesses.length < 2 ? 'too-few' : 'all-alike';
    return { score: null, reason, guess: null, twos, right, wrong, apart };
  }
  return { score: (right - wrong) / twos, reason: null, guess: 0.5, twos, right, wrong, apart };
}
