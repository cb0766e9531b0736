import { expect, test } from 'vitest';
import { createPapersDesk } from '../../src/bench/papers-desk.ts';
import type { PrintedVisit } from '../../src/printing/print-view.ts';

const caution = { title: null, text: 'Never.' };
const paper = (path: string, name: string) =>
  ({ is: 'beyond', paper: { path, name, caution, parts: [] } }) as const;

const made: PrintedVisit = {
  language: 'en',
  head: { title: 'A visit', site: 'Wendle Marsh', invented: null, particulars: [] },
  date: 'Date',
  drawings: [],
  papers: [paper('contents', 'Contents'), paper('safety', 'Safety sheet'), paper('signs', 'Signs')],
  together: 'Print pack',
  feet: {},
  feetTogether: '',
};
const visit = { name: 'a-visit', text: 'sound', files: [] };
const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

test('nothing is printed of a text that an error stops, and that is said', async () => {
  const desk = createPapersDesk(() => Promise.resolve(null), 'A4');
  desk.take(visit, false);
  desk.print('safety');
  await settled();
  expect(desk.$ask.get()).toBeNull();
  expect(desk.$told.get()).toContain('There is nothing to print yet');
  desk.look('safety');
  expect(desk.$seen.get()).toBeNull();
});

test('one paper, or all with their contents, laid out as chosen', async () => {
  const desk = createPapersDesk(() => Promise.resolve(made), 'A4');
  desk.take(visit, true);
  desk.choose({ size: 'Letter', isLarge: true });
  desk.print('safety');
  await settled();
  expect(desk.$ask.get()).toMatchObject({ act: 'print', paths: ['safety'], size: 'Letter', isLarge: true });
  desk.print(null);
  await settled();
  expect(desk.$ask.get()?.paths).toEqual(['contents', 'safety', 'signs']);
  expect(desk.$told.get()).toContain('Print pack');
});

test('only the newest press counts', async () => {
  const waiting: ((visit: PrintedVisit) => void)[] = [];
  const desk = createPapersDesk(() => new Promise((done) => waiting.push(done)), 'A4');
  desk.take(visit, true);
  desk.print('safety');
  desk.print('signs');
  waiting[1]?.(made);
  waiting[0]?.(made);
  await settled();
  expect(desk.$ask.get()?.paths).toEqual(['signs']);
});

test('what is looked at follows the text, and comes back after another was printed', async () => {
  const asked: string[] = [];
  const desk = createPapersDesk(({ text }) => {
    asked.push(text);
    return Promise.resolve(made);
  }, 'A4');
  desk.take(visit, true);
  desk.look('safety');
  await settled();
  desk.take({ ...visit, text: 'changed' }, false);
  await settled();
  expect(asked).toEqual(['sound']);
  desk.take({ ...visit, text: 'changed' }, true);
  await settled();
  expect(asked).toEqual(['sound', 'changed']);
  desk.print('signs');
  await settled();
  desk.answered({ answer: 'printed', number: desk.$ask.get()?.number ?? 0 });
  await settled();
  expect(desk.$ask.get()).toMatchObject({ act: 'look', paths: ['safety'] });
});

test('what is looked at takes nothing from a press that is not over yet', async () => {
  const desk = createPapersDesk(() => Promise.resolve(made), 'A4');
  desk.take(visit, true);
  desk.look('safety');
  await settled();
  desk.print('signs');
  await settled();
  const print = desk.$ask.get()?.number ?? 0;
  desk.count();
  desk.answered({ answer: 'printed', number: print });
  desk.take({ ...visit, text: 'changed' }, true);
  await settled();
  expect(desk.$ask.get()).toMatchObject({ act: 'count', paths: ['contents', 'safety', 'signs'] });
  desk.answered({ answer: 'counted', number: desk.$ask.get()?.number ?? 0, sheets: [] });
  await settled();
  expect(desk.$ask.get()).toMatchObject({ act: 'look', paths: ['safety'] });
});

test('sheets are told of the text they were counted of, and a late answer is not', async () => {
  const desk = createPapersDesk(() => Promise.resolve(made), 'A4');
  desk.take(visit, true);
  desk.count();
  await settled();
  const number = desk.$ask.get()?.number ?? 0;
  const sheets = [
    { path: 'contents', sheets: 1 },
    { path: 'safety', sheets: 4 },
    { path: 'signs', sheets: 7 },
  ];
  desk.answered({ answer: 'counted', number: number - 1, sheets });
  expect(desk.$counted.get()).toBeNull();
  desk.answered({ answer: 'counted', number, sheets });
  expect(desk.$counted.get()).toMatchObject({ text: 'sound', size: 'A4', isLarge: false });
  expect(desk.$told.get()).toBe('Counted for A4: about 12 sheets in all, one copy of each.');
});

test('what goes wrong in making them is said', async () => {
  const desk = createPapersDesk(() => Promise.reject(new Error('no room')), 'A4');
  desk.take(visit, true);
  desk.print(null);
  await settled();
  expect(desk.$told.get()).toContain('could not be made here (no room)');
});
