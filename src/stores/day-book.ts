import { atom, type ReadableAtom } from 'nanostores';
import { keptDay, keptShelf, type KeptDay, type KeptShelf, type Made } from './day-schema.ts';
import { forget, isTaken, keep, recall } from './storage.ts';

const ROOM = 'day';
const SHELF = 'shelf';

/** Everything of one's own days on this device, and the one that is open. */
export interface DayBook extends KeptShelf {
  readonly day: KeptDay | null;
  readonly isKept: boolean;
}

const EMPTY: DayBook = { open: null, days: [], day: null, isKept: true };

const $written = atom<DayBook>(EMPTY);
export const $dayBook: ReadableAtom<DayBook> = $written;

/** The plan that is shown: for dry or for wet weather. */
export const madeOf = (day: KeptDay | null): Made | null =>
  day === null ? null : day.isWet ? day.wet : day.dry;

const keepShelf = ({ open, days }: KeptShelf): boolean => keep(ROOM, SHELF, { open, days });

/** Reads what this device kept; called once a page is alive, so that what the server drew is what is first seen. */
export function openDayBook(): void {
  const shelf = recall(ROOM, SHELF, keptShelf);
  if (shelf === null) return;
  const day = shelf.open === null ? null : recall(ROOM, shelf.open, keptDay);
  $written.set({ ...shelf, open: day === null ? null : shelf.open, day, isKept: true });
}

/** The days as they lie on this device now: another page may have added one since. */
const daysNow = (): KeptShelf['days'] => recall(ROOM, SHELF, keptShelf)?.days ?? $written.get().days;

/** Takes a day from the shelf. */
export function takeDay(id: string): void {
  const day = recall(ROOM, id, keptDay);
  if (day === null) return;
  const book = { open: id, days: daysNow(), day };
  $written.set({ ...book, isKept: keepShelf(book) });
}

/** A name under which nothing lies, not even a day that the shelf has lost. */
function freeId(days: KeptShelf['days']): string {
  const numbers = days.map(({ id }) => Number(id.replace('own-', '')));
  let number = Math.max(0, ...numbers) + 1;
  while (isTaken(ROOM, `own-${number}`)) number += 1;
  return `own-${number}`;
}

/** Puts a new day on the shelf and opens it; no other day is written over. */
export function addDay(title: string, text: string): void {
  const days = daysNow();
  const id = freeId(days);
  const day: KeptDay = { title, text, isWet: false, dry: null, wet: null };
  const book = { open: id, days: [{ id, title }, ...days], day };
  const isDayKept = keep(ROOM, id, day);
  $written.set({ ...book, isKept: keepShelf(book) && isDayKept });
}

/** Writes to the day that is open; its title on the shelf goes with it. */
export function changeDay(next: Partial<KeptDay>): void {
  const book = $written.get();
  const { open } = book;
  if (book.day === null || open === null) return;
  const day = { ...book.day, ...next };
  const isDayKept = keep(ROOM, open, day);
  if (day.title === book.day.title) {
    $written.set({ ...book, day, isKept: isDayKept });
    return;
  }
  const entry = { id: open, title: day.title };
  const lying = daysNow();
  const days = lying.some(({ id }) => id === open)
    ? lying.map((each) => (each.id === open ? entry : each))
    : [entry, ...lying];
  $written.set({ ...book, day, days, isKept: keepShelf({ open, days }) && isDayKept });
}

/** Puts the open day back on the shelf. */
export function closeDay(): void {
  const book = { open: null, days: daysNow(), day: null };
  $written.set({ ...book, isKept: keepShelf(book) });
}

/** Takes a day off this device for good. */
export function dropDay(id: string): void {
  const { open, day } = $written.get();
  const isOpen = open === id;
  const book = {
    open: isOpen ? null : open,
    days: daysNow().filter((entry) => entry.id !== id),
    day: isOpen ? null : day,
  };
  forget(ROOM, id);
  $written.set({ ...book, isKept: keepShelf(book) });
}
