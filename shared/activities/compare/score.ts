import {
  meanScore,
  scoreJudgement,
  scoreLikeness,
  scorePlaces,
  type JudgementScore,
  type LikenessScore,
  type PlacesScore,
} from '../../assemblage/index.ts';
import type { Score } from '../kind.ts';
import type { CompareActivity } from './activity.ts';
import type { ComparePlay } from './play.ts';

export interface CompareScore extends Score {
  readonly working: {
    readonly places: PlacesScore | null;
    readonly likeness: LikenessScore | null;
    readonly judgement: JudgementScore | null;
    readonly [more: string]: unknown;
  };
}

type Said = Readonly<Record<string, number>>;

const hands = (said: string | Said | undefined): Said =>
  said === undefined ? {} : typeof said === 'string' ? { [said]: 1 } : said;

/**
 * Scores a comparison beyond guessing: the places of kinds; or the mean of how pairs of pits were ordered by likeness and how
 * chance was judged after the shuffles. What was said before them is shown and not scored.
 */
export function scoreCompare(activity: CompareActivity, play: ComparePlay): CompareScore {
  const { places, chance } = activity;
  if (places !== null) {
    const said = Object.entries(play.places ?? {}).map(([kind, answer]) => [kind, hands(answer)] as const);
    const result = scorePlaces(new Map(Object.entries(places.record)), new Map(said));
    const { score, guess } = result;
    return { score, guess, working: { places: result, likeness: null, judgement: null } };
  }
  const pairs = chance?.pairs ?? [];
  const likeness = scoreLikeness(
    pairs.map(({ id, likeness: record }) => ({ record, said: play.likeness?.[id] ?? null })),
  );
  const judgement = scoreJudgement(
    pairs.map(({ id, record }) => ({
      record,
      before: hands(play.before?.[id]),
      after: hands(play.after?.[id]),
    })),
  );
  const score = meanScore([likeness, judgement.after]);
  return { score, guess: judgement.after.guess, working: { places: null, likeness, judgement } };
}
