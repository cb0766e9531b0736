import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { readNotes } from '../../../shared/library/index.ts';
import { demoLessons, demoLibrary, home } from '../../demo.ts';

const text = readFileSync(join(home, 'content/notes.yaml'), 'utf8');
const known = {
  kinds: ['sort', 'compare', 'order', 'estimate', 'barter', 'handle', 'talk'],
  words: demoLibrary.glossary.map(({ word }) => word),
  sources: demoLibrary.sources.map(({ id }) => id),
};
const first = (given: string) => readNotes('notes.yaml', given, known).problems[0];

describe('what teacher notes are made from', () => {
  test('reads without a problem, with rows of every sort', () => {
    const { value, problems } = readNotes('notes.yaml', text, known);
    expect(problems).toEqual([]);
    expect(value?.misconceptions.length).toBeGreaterThanOrEqual(15);
    expect(value?.adaptations.length).toBeGreaterThanOrEqual(12);
  });

  test('a reply that is more than judgement or practice names a published work', () => {
    const works = new Map(demoLibrary.sources.map(({ id, status }) => [id, status]));
    const { talk, misconceptions } = demoLibrary.notes;
    const claimed = [...talk, ...misconceptions].filter(({ status }) => status === 'RF' || status === 'FM');
    expect(claimed.length).toBeGreaterThan(8);
    for (const { id, status, sources } of claimed) {
      const [main = ''] = sources;
      expect({ id, status: works.get(main) }).toEqual({ id, status });
    }
  });

  test.each([
    { from: 'kinds: [estimate]', to: 'kinds: [estimat]', code: 'word-unknown', mend: 'estimate' },
    {
      from: 'words: [archaeologist,',
      to: 'words: [archeologist,',
      code: 'word-unknown',
      mend: 'archaeologist',
    },
    { from: 'source: kaplan-2000', to: 'source: kaplan-2001', code: 'source-unknown', mend: 'kaplan-2000' },
    { from: 'id: died-young', to: 'id: dinosaurs', code: 'id-repeated', mend: undefined },
  ])('$to is told at its place', ({ from, to, code, mend }) => {
    const given = text.replace(from, to);
    const line = given.slice(0, text.indexOf(from) + 4).split('\n').length;
    const problem = first(given);
    expect(problem).toMatchObject({ code, from: { line } });
    expect(problem?.edit?.text).toBe(mend);
  });
});

describe('the notes of a lesson’s head', () => {
  const lesson = demoLessons.find(({ id }) => id === 'made-or-not')?.text ?? '';
  const withNotes = (notes: string) =>
    compileLesson('a.md', lesson.replace('\nclaims:', `\nnotes:\n${notes}\nclaims:`), demoLibrary, 'a');

  test('come into the plan as they are written', () => {
    const { plan, problems } = withNotes(
      '  leave-out: [dinosaurs]\n  misconceptions: [{ id: pit-is-bin, thought: It is a bin., reply: Perhaps. }]',
    );
    expect(problems).toEqual([]);
    expect(plan?.notes?.['leave-out']).toEqual(['dinosaurs']);
  });

  test.each([
    { notes: '  leave-out: [dinosaur]', column: 15, mend: 'dinosaurs' },
    { notes: '  adaptations: [{ id: swich, for: A, do: B }]', column: 23, mend: 'switch' },
  ])('$notes names no row of ours, and is told with the nearest', ({ notes, column, mend }) => {
    expect(withNotes(notes).problems).toMatchObject([
      { code: 'word-unknown', from: { line: 8, column }, edit: { text: mend } },
    ]);
  });

  test('a reply that is missing is told', () => {
    expect(withNotes('  misconceptions: [{ thought: It is a bin. }]').problems).toMatchObject([
      { code: 'key-missing', from: { line: 8 } },
    ]);
  });
});
