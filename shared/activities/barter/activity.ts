import type { Card, Coincidences, Good, Handover, World } from '../../bartering/index.ts';
import type { Band } from '../../library/bands.ts';
import type { ActivityBase } from '../kind.ts';

interface BarterBase extends ActivityBase {
  readonly kind: 'barter';
  readonly question: string;
}

/** One pupil, a pair or a class on one screen goes from trader to trader until the aim is in hand. */
export interface GatheringActivity extends BarterBase {
  readonly play: 'gathering';
  readonly world: World;
  /** The fewest handovers that bring the aim home. */
  readonly par: number;
  /** How many different chains are as short. */
  readonly chains: number;
  /** What aimless swapping gets: the mean of par / handovers. */
  readonly aimlessAverage: number;
  /** One of the shortest chains. */
  readonly example: readonly Handover[];
  /** Wants lie open, or are found by asking. */
  readonly wants: 'shown' | 'asked';
  /** How often wants meet at the start: what a token all would take would change. */
  readonly coincidences: Coincidences;
}

/** Cards dealt to a class, with what the class could do. */
export interface ClassDeal {
  readonly cards: readonly Card[];
  readonly bestTotal: number;
  /** Every pupil can go home better off. */
  readonly possible: boolean;
  /** For each card, in order, the number of the card whose thing it ends with in the best exchange. */
  readonly takesFrom: readonly number[];
  /** Numbers of cards that could swap straight, in twos and at most one three, so that all gain. */
  readonly straightPlan: readonly (readonly number[])[];
  /** The share of the best total that aimless straight swaps get, on average. */
  readonly aimlessShare: number;
}

/** A whole class: every pupil is a trader, with a card of their own. */
export interface ClassActivity extends BarterBase {
  readonly play: 'class';
  /** The band the cards are dealt for: the youngest of the lesson. */
  readonly band: Band;
  /** The goods a deal may use. */
  readonly goods: readonly Good[];
  /** Deals the cards for a class of another size. */
  readonly seed: string;
  /** The deal for the class expected. */
  readonly deal: ClassDeal;
}

export type BarterActivity = GatheringActivity | ClassActivity;
