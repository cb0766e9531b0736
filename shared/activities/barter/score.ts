import { scoreChain, type ChainScore } from '../../bartering/index.ts';
import type { Score } from '../kind.ts';
import type { BarterActivity, GatheringActivity } from './activity.ts';
import type { BarterPlay } from './play.ts';
import { scoreClassPlay } from './score-class-play.ts';

/** Scores a chain of swaps: against the shortest chain, beyond what aimless swapping gets. */
export const scoreGathering = (activity: GatheringActivity, play: BarterPlay): ChainScore =>
  scoreChain(activity.world, activity, play.swaps ?? []);

/** Scores a play of either sort of gathering. */
export const scoreBarter = (activity: BarterActivity, play: BarterPlay): Score =>
  activity.play === 'gathering' ? scoreGathering(activity, play) : scoreClassPlay(activity, play);
