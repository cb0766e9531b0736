import { pick, stream, type Stream } from '../chance/index.ts';
import { bestExchange, worthTo, type Card } from './best-exchange.ts';

/** What a class came home with, against the best it could do. */
export interface ClassScore {
  /** 1 for the best exchange, 0 for what aimless straight swaps get, below 0 under that; null where swapping aimlessly is as good as can be. */
  readonly score: number | null;
  /** The share of the best total that aimless straight swaps get, on average. */
  readonly guess: number;
  readonly working: {
    readonly total: number;
    readonly bestTotal: number;
    /** How many are better off than with what they brought. */
    readonly betterOff: number;
    readonly worseOff: number;
  };
}

/** Plays looked at for the average: a standard error under 0.01 for a class of 12 or more. */
const PLAYS = 400;

/**
 * What aimless straight swaps get of the best total, on average: two who would both gain swap, any such two as likely,
 * until there are none. Estimated from seeded plays, the same for the same cards.
 */
export function aimlessClassShare(cards: readonly Card[], bestTotal: number, plays = PLAYS): number {
  if (bestTotal <= 0) return 1;
  const chance = stream('aimless-class');
  const room = roomOf(cards);
  const { size, worth } = room;
  const start = cards.reduce((sum, card) => sum + worthTo(card, card.holds), 0);
  let sum = 0;
  for (let play = 0; play < plays; play += 1) {
    for (const [pupil, thing] of wander(room, chance).entries()) sum += worth[pupil * size + thing] ?? 0;
  }
  return (sum / plays - start) / bestTotal;
}

/** True when some aimless play misses the best total, in so few plays: then it matters who swaps with whom. */
export function mattersWhoSwaps(
  cards: readonly Card[],
  bestTotal: number,
  chance: Pick<Stream, 'next'>,
  plays: number,
): boolean {
  for (let play = 0; play < plays; play += 1)
    if (gainsOf(cards, aimlessEnd(cards, chance)) < bestTotal) return true;
  return false;
}

/** What each pupil thinks of each thing, things told by the card they came with: `worth[pupil * size + thing]`. */
interface Room {
  readonly size: number;
  readonly worth: Float64Array;
}

function roomOf(cards: readonly Card[]): Room {
  const size = cards.length;
  const worth = Float64Array.from(cards.flatMap((card) => cards.map((other) => worthTo(card, other.holds))));
  return { size, worth };
}

/** The things in hand when aimless straight swaps have come to an end, pupil by pupil. */
function wander({ size, worth }: Room, chance: Pick<Stream, 'next'>): number[] {
  const hands = Array.from({ length: size }, (_, pupil) => pupil);
  const own = hands.map((pupil) => worth[pupil * size + pupil] ?? 0);
  for (;;) {
    const pairs: number[] = [];
    for (let one = 0; one < size; one += 1) {
      for (let other = one + 1; other < size; other += 1) {
        const isBetter =
          (worth[one * size + (hands[other] ?? 0)] ?? 0) > (own[one] ?? 0) &&
          (worth[other * size + (hands[one] ?? 0)] ?? 0) > (own[other] ?? 0);
        if (isBetter) pairs.push(one * size + other);
      }
    }
    if (pairs.length === 0) return hands;
    const chosen = pick(chance, pairs);
    const one = Math.floor(chosen / size);
    const other = chosen % size;
    [hands[one], hands[other]] = [hands[other] ?? 0, hands[one] ?? 0];
    for (const pupil of [one, other]) own[pupil] = worth[pupil * size + (hands[pupil] ?? 0)] ?? 0;
  }
}

/** The goods in hand when aimless straight swaps have come to an end, card by card. */
export const aimlessEnd = (cards: readonly Card[], chance: Pick<Stream, 'next'>): string[] =>
  wander(roomOf(cards), chance).map((thing) => cards[thing]?.holds ?? '');

const gainsOf = (cards: readonly Card[], ends: readonly string[]): number =>
  cards.reduce((sum, card, index) => sum + worthTo(card, ends[index] ?? '') - worthTo(card, card.holds), 0);

/**
 * Scores a class by what each ended with: (total / best - guess) / (1 - guess).
 *
 * @param ends the good in hand at the end, card by card in the order of the cards.
 * @param guess what {@link aimlessClassShare} gives for these cards; worked out once, when they are dealt.
 * @throws RangeError when what is in hand is not what was dealt: goods are neither made nor lost.
 */
export function scoreClass(cards: readonly Card[], ends: readonly string[], guess: number): ClassScore {
  const dealt = cards.map(({ holds }) => holds).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  const ended = [...ends].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  if (dealt.join() !== ended.join()) throw new RangeError('what is in hand at the end is not what was dealt');
  const { bestTotal } = bestExchange(cards);
  const total = gainsOf(cards, ends);
  const change = (card: Card, index: number): number =>
    worthTo(card, ends[index] ?? '') - worthTo(card, card.holds);
  return {
    score: guess < 1 && bestTotal > 0 ? (total / bestTotal - guess) / (1 - guess) : null,
    guess,
    working: {
      total,
      bestTotal,
      betterOff: cards.filter((card, index) => change(card, index) > 0).length,
      worseOff: cards.filter((card, index) => change(card, index) < 0).length,
    },
  };
}
