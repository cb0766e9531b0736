import { pick, shuffle, uniformBelow, derive, type Stream } from '../chance/index.ts';
import type { Band } from '../library/bands.ts';
import { bestAssignment } from './assignment.ts';
import { bestExchange, worthTo, type BestExchange, type Card } from './best-exchange.ts';
import { mattersWhoSwaps } from './score-class.ts';

/** The least and most pupils a deal is made for. */
export const CLASS_SIZES = { least: 4, most: 36 } as const;

interface BandDeal {
  /** Kinds of goods in the room. */
  readonly kinds: number;
  /** Goods on a want card beyond the one surely to be had. */
  readonly moreWants: number;
  /** Whether swaps in a ring of three to five do better than straight ones. */
  readonly hasRings: boolean;
}

/** Status of every row: ASM. */
const BAND_DEAL: { readonly [B in Band]: BandDeal } = {
  '4-5': { kinds: 4, moreWants: 0, hasRings: false },
  '5-7': { kinds: 5, moreWants: 1, hasRings: false },
  '7-9': { kinds: 6, moreWants: 1, hasRings: false },
  '9-11': { kinds: 8, moreWants: 2, hasRings: false },
  '11-14': { kinds: 10, moreWants: 2, hasRings: true },
  '14-16': { kinds: 12, moreWants: 2, hasRings: true },
};

export interface DealOrder {
  readonly pupils: number;
  readonly band: Band;
  /** Ids of goods that may be swapped, at least four; the first so many as the band's kinds are used. */
  readonly goods: readonly string[];
}

/** Cards for a class, with what the class could do. */
export interface Deal extends BestExchange {
  readonly cards: readonly Card[];
  /** What everybody's own thing is worth to them, added up. */
  readonly startTotal: number;
  /** An exchange in which all gain by swapping in twos, with one ring of three where the class is odd: numbers of cards. */
  readonly straightPlan: readonly (readonly number[])[];
}

/** Draws looked at before the last is taken as it is. */
const MOST_DRAWS = 60;

/** Aimless plays looked at to see that choosing matters. */
const TRIAL_PLAYS = 12;

/** The pairs of a class in random order; one ring of three at the end where it is odd. */
function pairUp(pupils: number, chance: Stream): number[][] {
  const order = shuffle(
    chance,
    Array.from({ length: pupils }, (_, index) => index),
  );
  const groups: number[][] = [];
  while (order.length > 0) groups.push(order.splice(0, order.length === 3 ? 3 : 2));
  return groups;
}

/** Goods for each pupil: as even as can be, and never the same twice in a group. */
function holdsFor(
  groups: readonly (readonly number[])[],
  kinds: readonly string[],
  chance: Stream,
): string[] {
  const holds: string[] = [];
  let bag: string[] = [];
  for (const group of groups) {
    const taken: string[] = [];
    for (const pupil of group) {
      if (!bag.some((good) => !taken.includes(good))) bag = [...bag, ...shuffle(chance, kinds)];
      const at = bag.findIndex((good) => !taken.includes(good));
      const [good] = bag.splice(at, 1);
      holds[pupil] = good ?? '';
      taken.push(good ?? '');
    }
  }
  return holds;
}

function draw(
  order: DealOrder,
  kinds: readonly string[],
  chance: Stream,
): { cards: Card[]; straightPlan: number[][] } {
  const { moreWants, hasRings } = BAND_DEAL[order.band];
  const groups = pairUp(order.pupils, chance);
  const holds = holdsFor(groups, kinds, chance);
  const wants = holds.map((good): Record<string, number> => ({ [good]: 1 + uniformBelow(chance, 2) }));
  const raise = (pupil: number, good: string | undefined, worth: number): void => {
    const card = wants[pupil];
    if (card !== undefined && good !== undefined && good !== holds[pupil])
      card[good] = Math.max(card[good] ?? 0, worth);
  };
  for (const group of groups) {
    for (const [at, pupil] of group.entries())
      raise(pupil, holds[group[(at + 1) % group.length] ?? 0], 5 + uniformBelow(chance, 2));
  }
  if (hasRings) {
    const left = shuffle(
      chance,
      holds.map((_, pupil) => pupil),
    );
    while (left.length >= 3) {
      const size = left.length < 6 ? left.length : 3 + uniformBelow(chance, 3);
      const ring = left.splice(0, left.length - size < 3 && left.length > size ? 3 : size);
      for (const [at, pupil] of ring.entries())
        raise(pupil, holds[ring[(at + 1) % ring.length] ?? 0], 8 + uniformBelow(chance, 2));
    }
  }
  for (const pupil of holds.keys()) {
    for (let more = 0; more < moreWants; more += 1)
      raise(pupil, pick(chance, kinds), 3 + uniformBelow(chance, 2));
  }
  const cards = holds.map((good, pupil): Card => {
    const list = Object.entries(wants[pupil] ?? {}).sort(([, a], [, b]) => b - a);
    return {
      number: pupil + 1,
      holds: good,
      wants: Object.fromEntries(list.map(([wanted, worth]) => [wanted, [worth]])),
    };
  });
  return { cards, straightPlan: groups.map((group) => group.map((pupil) => pupil + 1)) };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** The greatest sum of gains if pupils could be made to give things up: a check that nobody has to lose for the best. */
function greatestAtAnyCost(cards: readonly Card[]): number {
  const table = cards.map((card) =>
    cards.map((other) => worthTo(card, other.holds) - worthTo(card, card.holds)),
  );
  return sum(bestAssignment(table).map((column, row) => table[row]?.[column] ?? 0));
}

/**
 * Cards for a class such that everybody can go home better off, by straight swaps alone (one ring of three in an odd class).
 * Draws again while the greatest sum could be had only at someone's cost, so that what is best for all is best for each;
 * and while aimless swapping always comes out best, but for the youngest. A very small class may have to do with that.
 *
 * @throws RangeError for a class outside {@link CLASS_SIZES} or fewer than four goods.
 * @example deal({ pupils: 30, band: '9-11', goods }, stream('7')).possible // true
 */
export function deal(order: DealOrder, chance: Stream): Deal {
  const { pupils, band } = order;
  if (!Number.isInteger(pupils) || pupils < CLASS_SIZES.least || pupils > CLASS_SIZES.most) {
    throw new RangeError(
      `a class must be from ${CLASS_SIZES.least} to ${CLASS_SIZES.most}, received ${pupils}`,
    );
  }
  const goods = [...new Set(order.goods)];
  if (goods.length < 4) throw new RangeError(`a deal needs at least four goods, received ${goods.length}`);
  const kinds = goods.slice(0, Math.min(BAND_DEAL[band].kinds, Math.max(4, pupils)));
  for (let tried = 1; ; tried += 1) {
    const { cards, straightPlan } = draw(order, kinds, derive(chance, `deal-${tried}`));
    const best = bestExchange(cards);
    if (tried < MOST_DRAWS) {
      if (best.bestTotal < greatestAtAnyCost(cards)) continue;
      // One want each leaves nothing to choose, and the youngest need not choose.
      const isChoice = BAND_DEAL[band].moreWants > 0;
      if (
        isChoice &&
        !mattersWhoSwaps(cards, best.bestTotal, derive(chance, `aimless-${tried}`), TRIAL_PLAYS)
      )
        continue;
    }
    return { cards, straightPlan, startTotal: sum(cards.map((card) => worthTo(card, card.holds))), ...best };
  }
}
