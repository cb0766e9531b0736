import type { CompareActivity, ComparePair, ComparePlay } from '../../shared/activities/scorers.ts';
import { mostSaid, type Said } from '../stores/compare.ts';

type Pair = Pick<ComparePair, 'id'>;

/** The questions asked of a pair, by the names under which answers are kept. */
export const alikeOf = ({ id }: Pair): string => `alike-${id}`;
export const beforeOf = ({ id }: Pair): string => `before-${id}`;
export const afterOf = ({ id }: Pair): string => `after-${id}`;
export const questionsOf = (pair: Pair): readonly string[] => [alikeOf(pair), beforeOf(pair), afterOf(pair)];

/** Five answers, from not at all to the same. */
const STEPS = 4;

/** How alike a pair was said to be, on the scale of its measure; null where nothing was said, or as many said two things. */
export function saidAlike({ chance }: CompareActivity, said: Said, pair: Pair): number | null {
  const step = mostSaid(said, alikeOf(pair));
  return step === null ? null : (Number(step) / STEPS) * (chance?.most ?? 1);
}

/** The answers as a play. */
export function chancePlay(activity: CompareActivity, said: Said): ComparePlay {
  const pairs = activity.chance?.pairs ?? [];
  const answers = (question: (pair: Pair) => string) =>
    Object.fromEntries(pairs.map((pair) => [pair.id, said[question(pair)] ?? {}]));
  return {
    activity: activity.id,
    likeness: Object.fromEntries(
      pairs.flatMap((pair) => {
        const value = saidAlike(activity, said, pair);
        return value === null ? [] : [[pair.id, value]];
      }),
    ),
    before: answers(beforeOf),
    after: answers(afterOf),
  };
}
