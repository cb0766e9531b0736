import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import type { OrderActivity } from '../../shared/activities/scorers.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

const ORDER_WAYS = ['alone', 'pairs', 'hands'] as const;
export type OrderWay = (typeof ORDER_WAYS)[number];

const stored = z.object({
  way: z.enum(ORDER_WAYS),
  line: z.array(z.nullable(z.string())),
  isRead: z.boolean(),
});

/** Each place of the line, first to last: a card's id, or null where none lies yet. */
export type Line = readonly (string | null)[];

/** What is on the table: the line, hands counted for the next card, and whether the record has been read. */
export interface OrderTable extends z.infer<typeof stored> {
  /** The card in the hand; it lies with the others again after a reload. */
  readonly hand: string | null;
  /** Earlier lines, newest last, so that one can step back. */
  readonly past: readonly Line[];
  /** Hands up for the next card. */
  readonly hands: Readonly<Record<string, number>>;
  readonly isKept: boolean;
}

/** The table of one order and everything that may be done on it. */
export interface OrderStore {
  readonly $table: ReadableAtom<OrderTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  /** Takes a card in the hand; the same card again lays it down. */
  readonly lift: (card: string) => void;
  /** Lays the card in the hand at a place, from 0; a card that lies there makes room. */
  readonly place: (place: number) => void;
  /** Changes a card with its neighbour. */
  readonly move: (place: number, by: -1 | 1) => void;
  readonly putBack: () => void;
  readonly stepBack: () => void;
  readonly playAs: (way: OrderWay) => void;
  readonly countHands: (card: string, hands: number) => void;
  /** Lays the card with most hands at the first empty place; why not, where it cannot. */
  readonly layMost: () => 'laid' | 'tie' | 'none';
  readonly readRecord: () => void;
  readonly backToLine: () => void;
  readonly startAgain: () => void;
}

/** The cards that lie on the line. */
export const laidCards = (line: Line): readonly string[] => line.filter((card) => card !== null);

/** A card at a place; those from there to the nearest empty place move up by one, later ones first. */
export function insertCard(line: Line, card: string, place: number): Line {
  const next = [...line];
  const later = next.indexOf(null, place);
  const empty = later === -1 ? next.lastIndexOf(null, place) : later;
  if (empty === -1) return line;
  next.splice(empty, 1);
  next.splice(place, 0, card);
  return next;
}

const LONGEST_PAST = 100;

/** The table of an order, empty until it is picked up as it was left on this device. */
export function openOrder(lesson: string, activity: OrderActivity): OrderStore {
  const empty: OrderTable = {
    way: 'alone',
    line: activity.steps.map(() => null),
    isRead: false,
    hand: null,
    past: [],
    hands: {},
    isKept: true,
  };
  const $table = atom<OrderTable>(empty);

  const tell = (): void => {
    const { line, isRead } = $table.get();
    // The last step is reading the record.
    noteProgress(activity.id, isRead ? 1 : laidCards(line).length / (line.length + 1));
  };
  const change = (next: Partial<OrderTable>): void => {
    const table = { ...$table.get(), ...next };
    const { way, line, isRead } = table;
    $table.set({ ...table, isKept: keep(lesson, activity.id, { way, line, isRead }) });
    tell();
  };
  const lay = (line: Line): void => {
    const table = $table.get();
    change({
      line: [...line],
      past: [...table.past, table.line].slice(-LONGEST_PAST),
      hand: null,
      hands: {},
    });
  };
  const without = (line: Line, card: string): Line => line.map((each) => (each === card ? null : each));
  const pickUp = (): void => {
    const kept = recall(lesson, activity.id, stored);
    const known = new Set(activity.steps.map(({ id }) => id));
    const cards = laidCards(kept?.line ?? []);
    // A lesson that was changed may have other cards: then its line begins anew.
    const fits =
      kept?.line.length === known.size &&
      new Set(cards).size === cards.length &&
      cards.every((card) => known.has(card));
    if (kept !== null && fits) $table.set({ ...empty, ...kept });
    tell();
  };

  return {
    $table,
    pickUp,
    lift: (card) => change({ hand: $table.get().hand === card ? null : card }),
    place: (place) => {
      const { hand, line } = $table.get();
      if (hand !== null) lay(insertCard(without(line, hand), hand, place));
    },
    move: (place, by) => {
      const line = [...$table.get().line];
      const [here = null, there = null] = [line[place], line[place + by]];
      if (here === null || place + by < 0 || place + by >= line.length) return;
      line[place] = there;
      line[place + by] = here;
      lay(line);
    },
    putBack: () => {
      const { hand, line } = $table.get();
      if (hand === null) return;
      if (line.includes(hand)) lay(without(line, hand));
      else change({ hand: null });
    },
    stepBack: () => {
      const { past } = $table.get();
      const line = past.at(-1);
      if (line !== undefined) change({ line: [...line], past: past.slice(0, -1), hand: null });
    },
    playAs: (way) => change({ way, hand: null, hands: {}, isRead: false }),
    countHands: (card, hands) =>
      change({ hands: { ...$table.get().hands, [card]: Math.max(0, Math.min(99, Math.round(hands))) } }),
    layMost: () => {
      const { hands, line } = $table.get();
      const place = line.indexOf(null);
      const [most, next] = Object.entries(hands).toSorted(([, a], [, b]) => b - a);
      if (most === undefined || most[1] === 0 || place === -1) return 'none';
      if (next?.[1] === most[1]) return 'tie';
      lay(insertCard(line, most[0], place));
      return 'laid';
    },
    readRecord: () => change({ isRead: true, hand: null }),
    backToLine: () => change({ isRead: false }),
    startAgain: () => change({ ...empty, way: $table.get().way }),
  };
}
