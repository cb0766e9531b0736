import { expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import type { Find, Library } from '../../../shared/library/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

/** The demo library with one find more, in some pit. */
function withFindIn(pitId: string): Library {
  const sites = demoLibrary.sites.map((site) => ({
    ...site,
    pits: site.pits.map((pit) => {
      const [first] = pit.finds;
      if (pit.id !== pitId || first === undefined) return pit;
      const added: Find = { ...first, id: `${pitId}-900`, smallFind: 900, note: 'found later' };
      return { ...pit, finds: [...pit.finds, added] };
    }),
  }));
  return { ...demoLibrary, sites };
}

const bytes = (text: string, library: Library, seed: string): string =>
  JSON.stringify(compileLesson('lesson.md', text, library, seed));

/** Lessons that say nothing of pit 2: one that counts what it holds does change. */
const withoutPit2 = demoLessons.filter(({ text }) => !/\bP2\b/.test(text));

test.each(withoutPit2)('$id: a find added to another pit changes nothing', ({ text }) => {
  expect(bytes(text, withFindIn('P2'), '7')).toBe(bytes(text, demoLibrary, '7'));
});

test('a find added to the pit of a sort does change it: the test above can fail', () => {
  const text = demoLessons.find(({ id }) => id === 'made-or-not')?.text ?? '';
  expect(bytes(text, withFindIn('P3'), '7')).not.toBe(bytes(text, demoLibrary, '7'));
});

test.each(demoLessons)('$id: compiled twice, with others between, it is the same bytes', ({ text }) => {
  const first = bytes(text, demoLibrary, '7');
  for (const other of demoLessons) bytes(other.text, demoLibrary, '8');
  expect(bytes(text, demoLibrary, '7')).toBe(first);
});

const withSorts = demoLessons.filter(({ text }) => text.includes('```sort'));

test.each(withSorts)('$id: another seed deals the same finds in another order', ({ text }) => {
  const dealt = (seed: string): readonly string[][] =>
    (compileLesson('lesson.md', text, demoLibrary, seed).plan?.activities ?? []).flatMap((activity) =>
      activity.kind === 'sort' ? [activity.finds.map(({ id }) => id)] : [],
    );
  const [one, two] = [dealt('1'), dealt('2')];
  expect(one).not.toEqual(two);
  expect(one.map((ids) => ids.toSorted())).toEqual(two.map((ids) => ids.toSorted()));
});

const HEAD = '---\ntitle: Six pits\nsite: wendle-marsh\nbands: [14-16]\nminutes: 40\n---\n';
const block = (more: string, minutes = 8): string =>
  `\`\`\`sort\n${more}title: Who made this?\nfinds: [P3-124, P3-125, P3-127, P3-131]\nby: made-by\ntrays: [carved, ground, fired, not made]\nminutes: ${minutes}\n\`\`\`\n`;

const compile = (text: string) => compileLesson('six-pits.md', text, demoLibrary, '1');

test('prose and activities stand in the plan in the order of the file', () => {
  const { plan } = compile(`${HEAD}First.\n\n${block('')}\nThen.\n\n${block('id: again\n')}\nLast.\n`);
  expect(plan?.parts).toEqual([
    { part: 'prose', html: '<p>First.</p>' },
    { part: 'activity', activity: 'sort-1' },
    { part: 'prose', html: '<p>Then.</p>' },
    { part: 'activity', activity: 'again' },
    { part: 'prose', html: '<p>Last.</p>' },
  ]);
});

test('a block added after another does not deal that one anew', () => {
  const order = (text: string) => compile(text).plan?.activities[0];
  expect(order(HEAD + block('') + block(''))).toEqual(order(HEAD + block('')));
});

test('a block with an id of its own keeps its deal when it moves', () => {
  const own = block('id: mine\n');
  const dealt = (text: string) => compile(text).plan?.activities.find(({ id }) => id === 'mine');
  expect(dealt(HEAD + block('') + own)).toEqual(dealt(HEAD + own + block('')));
});

test('an id that another block has by its number is told', () => {
  expect(compile(HEAD + block('') + block('id: sort-1\n')).problems.map(({ code }) => code)).toEqual([
    'id-repeated',
  ]);
});

test('minutes over the lesson are an error of the head; exactly filling it is none', () => {
  const codes = (text: string): readonly string[] =>
    compile(text).problems.map(({ code, grade, from }) => `${code} ${grade} ${from.line}`);
  expect(codes(HEAD.replace('40', '16') + block('') + block(''))).toEqual([]);
  expect(codes(HEAD.replace('40', '15') + block('') + block(''))).toEqual(['minutes-over error 5']);
});

test('a lesson of prose alone is a lesson', () => {
  const { plan, problems } = compile(`${HEAD}Only talk.\n`);
  expect(problems).toEqual([]);
  expect(plan?.activities).toEqual([]);
});

test('a lesson that does not compile still has its title, so that a page can name it', () => {
  expect(compile(HEAD + block('').replace('ground', 'grond'))).toMatchObject({
    plan: null,
    title: 'Six pits',
  });
  expect(compile('no head').title).toBeNull();
});

test('nothing of the library is changed by compiling', () => {
  const before = JSON.stringify(demoLibrary);
  for (const { text } of demoLessons) compile(text);
  expect(JSON.stringify(demoLibrary)).toBe(before);
});
