import { bestAssignment } from './assignment.ts';
import type { Wants } from './world.ts';

/** One pupil's card in a gathering of a whole class: one thing in hand, and what a first of each good is worth. */
export interface Card {
  /** The number printed on it, from 1. */
  readonly number: number;
  readonly holds: string;
  /** A list of one worth a good, so that it reads as any trader's wants do; a good left out is worth nothing. */
  readonly wants: Wants;
}

/** The best a class can do with its cards. */
export interface BestExchange {
  /** Everyone can go home with something they would rather have than what they brought. */
  readonly possible: boolean;
  /** The greatest sum of gains of an exchange that leaves nobody worse off, and everybody better off where that is possible. */
  readonly bestTotal: number;
  /** For each card, in order, the number of the card whose thing it ends with. */
  readonly takesFrom: readonly number[];
}

/** What a good is worth to the holder of a card. */
export const worthTo = (card: Card, good: string): number => card.wants[good]?.[0] ?? 0;

/**
 * The best exchange, exactly: an assignment of things to pupils with the greatest sum of gains.
 *
 * Where all can gain, only exchanges in which all do are looked at; else those that leave nobody worse off.
 * Worths are whole numbers below 1,000,000, for up to 1,000 cards.
 *
 * @example bestExchange([{ number: 1, holds: 'hide', wants: { pot: [3] } }, { number: 2, holds: 'pot', wants: { hide: [2] } }]).bestTotal // 5
 */
export function bestExchange(cards: readonly Card[]): BestExchange {
  const gainOf = (card: Card, other: Card): number => worthTo(card, other.holds) - worthTo(card, card.holds);
  // More than any sum of gains: an assignment uses a barred cell only when it has to.
  const barred = -1e9;
  const solve = (least: number): { readonly columns: number[]; readonly total: number } => {
    const table = cards.map((card) =>
      cards.map((other) => (card === other || gainOf(card, other) >= least ? gainOf(card, other) : barred)),
    );
    for (const [index, row] of table.entries()) if (least > 0) row[index] = barred;
    const columns = bestAssignment(table);
    return { columns, total: columns.reduce((sum, column, row) => sum + (table[row]?.[column] ?? 0), 0) };
  };
  const allGain = solve(1);
  const possible = cards.length > 0 && allGain.total > barred / 2;
  const { columns, total } = possible ? allGain : solve(0);
  return { possible, bestTotal: total, takesFrom: columns.map((column) => cards[column]?.number ?? 0) };
}

/** The rings of an exchange: who takes from whom, round; those who keep their own are left out. Two in a ring is a straight swap. */
export function ringsOf(cards: readonly Card[], takesFrom: readonly number[]): number[][] {
  const from = new Map(cards.map((card, index) => [card.number, takesFrom[index] ?? card.number]));
  const rings: number[][] = [];
  const walked = new Set<number>();
  for (const { number: first } of cards) {
    const ring: number[] = [];
    for (let number = first; !walked.has(number); number = from.get(number) ?? number) {
      walked.add(number);
      ring.push(number);
    }
    if (ring.length > 1) rings.push(ring);
  }
  return rings;
}
