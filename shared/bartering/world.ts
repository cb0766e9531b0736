/** A kind of thing at the gathering. */
export interface Good {
  readonly id: string;
  /** With its article: "a hide", "some grain". */
  readonly one: string;
  readonly many: string;
  /** Hours of work in one, where a figure is known; null where none is. */
  readonly hours: number | null;
  /** The handovers after which it is worth nothing to anyone; null for what keeps. */
  readonly spoilsAfter: number | null;
  /** Never swapped: it passes only as a gift, or in return for one. */
  readonly onlyGiven: boolean;
}

/** How many of each good, by id; a good left out is none. */
export type Holding = Readonly<Record<string, number>>;

/** What a first, second, third of each good is worth to one trader: whole numbers that never rise. */
export type Wants = Readonly<Record<string, readonly number[]>>;

export interface Trader {
  readonly id: string;
  readonly name: string;
  readonly holds: Holding;
  readonly wants: Wants;
  /** Goods wanted only because someone else will take them. */
  readonly forSwapping: readonly string[];
  /** `gift`: swaps only with someone who has given them something first. */
  readonly door: 'open' | 'gift';
  /** The good they give, later, in return for a gift; null for those who take no gifts. */
  readonly returns: string | null;
}

/** A gathering without money: the pupil (a trader too), those they meet, and the one thing to come home with. */
export interface World {
  readonly goods: readonly Good[];
  readonly pupil: Trader;
  /** Those the pupil meets, in the order they are met. */
  readonly traders: readonly Trader[];
  /** The id of the good to come home with. */
  readonly aim: string;
  /** The most things one side of a swap may be; the other side is one thing. 1 for one-for-one. */
  readonly bundle: number;
}

/**
 * Something passes between the pupil and one trader. Both lists full: a swap. Nothing taken: a gift.
 * Nothing given: what was owed for a gift comes back.
 *
 * @example ({ with: 'ama', give: ['hide', 'hide'], take: ['pot'] })
 */
export interface Handover {
  readonly with: string;
  readonly give: readonly string[];
  readonly take: readonly string[];
}
