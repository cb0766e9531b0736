import { pick, uniformBelow, type Stream } from '../../chance/index.ts';
import type { Told } from '../kind.ts';
import type { TalkActivity, TalkChoice } from './activity.ts';
import type { TalkPlay } from './play.ts';

/** Hands for one choice, in the order the choices stand. */
export interface HandsFor {
  readonly id: string;
  readonly hands: number;
}

export interface TalkTold extends Told {
  /** [] where nobody was asked, or nobody stood. */
  readonly before: readonly HandsFor[];
  readonly after: readonly HandsFor[];
  /** How many hands moved at least; null where the two counts are not of as many hands, or there is but one. */
  readonly moved: number | null;
  readonly weighs: readonly HandsFor[];
}

type Hands = Readonly<Record<string, number>> | undefined;

const counted = (choices: readonly TalkChoice[], hands: Hands): readonly HandsFor[] => {
  const rows = choices.map(({ id }) => ({ id, hands: hands?.[id] ?? 0 }));
  return rows.some((row) => row.hands > 0) ? rows : [];
};

const sum = (rows: readonly HandsFor[]): number => rows.reduce((total, { hands }) => total + hands, 0);

/** Where a group stood, before and after, and what would change its mind. No answer is right, so there is no score. */
export function tellTalk({ stances, evidence }: TalkActivity, play: TalkPlay): TalkTold {
  const before = counted(stances, play.before);
  const after = counted(stances, play.after);
  const isComparable = before.length > 0 && after.length > 0 && sum(before) === sum(after);
  return {
    before,
    after,
    moved: isComparable
      ? after.reduce((total, { hands }, index) => total + Math.max(0, hands - (before[index]?.hands ?? 0)), 0)
      : null,
    weighs: counted(evidence, play.weighs),
  };
}

/** Some hands for each stance, before and after, and for one piece of evidence. */
export function sampleTalk({ id, stances, evidence }: TalkActivity, chance: Stream): TalkPlay {
  const hands = (): Record<string, number> =>
    Object.fromEntries(stances.map((stance) => [stance.id, uniformBelow(chance, 16)]));
  return {
    activity: id,
    ...(stances.length > 0 ? { before: hands(), after: hands() } : {}),
    weighs: { [pick(chance, evidence).id]: 1 + uniformBelow(chance, 30) },
  };
}
