import { beforeEach, expect, test, vi } from 'vitest';
import type * as DayBook from '../../src/stores/day-book.ts';

/** What a browser keeps, as far as the stores use it; all pages of a site share it. */
function keepsAll(): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    clear: () => kept.clear(),
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

type Book = typeof DayBook;

/** A page of its own: what it holds in memory is not the other page’s. */
async function page(): Promise<Book> {
  vi.resetModules();
  const book = await import('../../src/stores/day-book.ts');
  book.openDayBook();
  return book;
}

const shelf = ({ $dayBook }: Book): readonly string[] => $dayBook.get().days.map(({ title }) => title);

beforeEach(() => vi.stubGlobal('localStorage', keepsAll()));

test('a day put there by another page stays, whatever this page does next', async () => {
  const sheet = await page();
  sheet.addDay('Ours', 'title: Ours\n');
  const bench = await page();
  bench.addDay('From a visit', 'title: From a visit\n');
  sheet.changeDay({ title: 'Ours still', text: 'title: Ours still\n' });
  sheet.closeDay();
  sheet.addDay('A third', 'title: A third\n');
  const later = await page();
  expect(shelf(later)).toEqual(['A third', 'From a visit', 'Ours still']);
  for (const { id, title } of later.$dayBook.get().days) {
    later.takeDay(id);
    expect(later.$dayBook.get().day).toMatchObject({ title, text: `title: ${title}\n` });
  }
});

test('a new day is the one that is open on the page that comes next', async () => {
  const bench = await page();
  bench.addDay('First', 'a');
  bench.addDay('Second', 'b');
  const sheet = await page();
  expect(sheet.$dayBook.get()).toMatchObject({
    open: 'own-2',
    day: { title: 'Second', text: 'b' },
    isKept: true,
  });
});

test('a shelf that cannot be read costs no day: a new one takes another name', async () => {
  const before = await page();
  before.addDay('Before', 'text of before');
  localStorage.setItem('pitlore/1/day/shelf', 'not what we wrote');
  const after = await page();
  after.addDay('After', 'text of after');
  expect(localStorage.getItem('pitlore/1/day/own-1')).toContain('text of before');
  expect(localStorage.getItem('pitlore/1/day/own-2')).toContain('text of after');
});

test('changes on their way into the text are there after the page was left', async () => {
  const sheet = await page();
  sheet.addDay('Ours', 'title: Ours\n');
  const waiting = [
    { path: ['groups', 'a', 'pupils'], value: 7 },
    { path: ['stations', 'b', 'kit', 0], remove: true },
  ] as const;
  sheet.changeDay({ waiting });
  expect((await page()).$dayBook.get().day?.waiting).toEqual(waiting);
});

test('a day kept before there were such changes is read as it was', async () => {
  localStorage.setItem(
    'pitlore/1/day/shelf',
    JSON.stringify({ open: 'own-1', days: [{ id: 'own-1', title: 'Old' }] }),
  );
  localStorage.setItem(
    'pitlore/1/day/own-1',
    JSON.stringify({ title: 'Old', text: 'title: Old\n', isWet: true, dry: null, wet: null }),
  );
  expect((await page()).$dayBook.get().day).toEqual({
    title: 'Old',
    text: 'title: Old\n',
    isWet: true,
    dry: null,
    wet: null,
  });
});

test('a browser that keeps nothing is told of, and nothing is half there', async () => {
  const full = keepsAll();
  full.setItem = () => {
    throw new Error('full');
  };
  vi.stubGlobal('localStorage', full);
  const bench = await page();
  bench.addDay('Ours', 'a');
  expect(bench.$dayBook.get().isKept).toBe(false);
});
