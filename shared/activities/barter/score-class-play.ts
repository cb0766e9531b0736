import { scoreClass, type ClassScore } from '../../bartering/index.ts';
import type { Score } from '../kind.ts';
import type { ClassActivity, ClassDeal } from './activity.ts';
import { dealFor } from './class-deal.ts';
import type { BarterPlay } from './play.ts';

/** A class's score, or why nothing can be said. */
export interface ClassPlayScore extends Score {
  readonly working:
    | ClassScore['working']
    | {
        readonly why:
          'nothing-told' | 'class-unfit' | 'not-what-was-dealt' | 'more-than-pupils' | 'more-than-possible';
      };
}

type Why = Extract<ClassPlayScore['working'], { why: unknown }>['why'];

const silent = (why: Why): ClassPlayScore => ({ score: null, guess: null, working: { why } });

function dealOf(activity: ClassActivity, pupils: number): ClassDeal | null {
  if (pupils === activity.deal.cards.length) return activity.deal;
  try {
    return dealFor(activity, pupils);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** How many gained how much, keyed in by hands. */
function scoreGains(deal: ClassDeal, gains: Readonly<Record<string, number>>): ClassPlayScore {
  const counts = Object.entries(gains).map(([gain, pupils]) => ({ gain: Number(gain), pupils }));
  const pupils = counts.reduce((sum, count) => sum + count.pupils, 0);
  if (pupils === 0) return silent('nothing-told');
  if (pupils > deal.cards.length) return silent('more-than-pupils');
  const total = counts.reduce((sum, count) => sum + count.gain * count.pupils, 0);
  if (!(total <= deal.bestTotal)) return silent('more-than-possible');
  const guess = deal.aimlessShare;
  const share = deal.bestTotal > 0 ? total / deal.bestTotal : 0;
  const betterOff = counts.reduce((sum, count) => sum + (count.gain > 0 ? count.pupils : 0), 0);
  const worseOff = counts.reduce((sum, count) => sum + (count.gain < 0 ? count.pupils : 0), 0);
  return {
    score: guess < 1 ? (share - guess) / (1 - guess) : null,
    guess,
    working: { total, bestTotal: deal.bestTotal, betterOff, worseOff },
  };
}

/** Scores a class by what each came home with, or by hands for each gain: 0 for aimless straight swaps, 1 for the best. */
export function scoreClassPlay(activity: ClassActivity, play: BarterPlay): ClassPlayScore {
  const deal = dealOf(activity, play.pupils ?? activity.deal.cards.length);
  if (deal === null) return silent('class-unfit');
  if (play.gains !== undefined) return scoreGains(deal, play.gains);
  if (play.ends === undefined) return silent('nothing-told');
  try {
    return scoreClass(deal.cards, play.ends, deal.aimlessShare);
  } catch (error) {
    if (error instanceof RangeError) return silent('not-what-was-dealt');
    throw error;
  }
}
