import { describe, expect, test } from 'vitest';
import { sheetsOf } from '../../../shared/activities/index.ts';
import { bandPlan, compileLesson, type Plan } from '../../../shared/compile/index.ts';
import { teacherNotes, type NotesDocument, type NotesSection } from '../../../shared/notes/index.ts';
import { divideRest } from '../../../shared/notes/minutes.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

function planOf(id: string, change: (text: string) => string = (text) => text): Plan {
  const lesson = demoLessons.find((each) => each.id === id);
  const { plan, problems } = compileLesson('a.md', change(lesson?.text ?? ''), demoLibrary, id);
  if (plan === null) throw new Error(JSON.stringify(problems));
  return plan;
}

const notesOf = (plan: Plan): NotesDocument => teacherNotes(plan, demoLibrary);
const section = ({ sections }: NotesDocument, id: string): NotesSection | undefined =>
  sections.find((each) => each.id === id);
/** The rows of the first table of a section, as texts. */
function rowsOf(document: NotesDocument, id: string): readonly (readonly string[])[] {
  const table = section(document, id)?.blocks.find(({ block }) => block === 'table');
  return table?.block === 'table' ? table.rows.map((row) => row.map(({ text }) => text)) : [];
}
const everyText = (document: NotesDocument): string => JSON.stringify(document.sections);

describe.each(demoLessons.map(({ id }) => ({ id, plan: planOf(id) })))('the notes of $id', ({ plan }) => {
  const document = notesOf(plan);

  test('say the job in three lines, then the time, what to bring, and safety', () => {
    expect(document.sections.slice(0, 4).map(({ id }) => id)).toEqual(['job', 'minutes', 'kit', 'safety']);
    const [job] = section(document, 'job')?.blocks ?? [];
    expect(job?.block === 'list' ? job.items.length : 0).toBe(3);
  });

  test('have minutes that add up to the lesson’s', () => {
    const minutes = rowsOf(document, 'minutes').map(([, figure]) => Number(figure));
    const parts = minutes.slice(1, -1);
    expect(parts.reduce((total, each) => total + each, 0)).toBe(plan.minutes);
    expect(minutes.at(-1)).toBe(plan.minutes);
    expect(parts.every((each) => each > 0)).toBe(true);
  });

  test('have every activity’s answers, each with its reason', () => {
    const text = everyText(document);
    for (const activity of plan.activities) {
      expect(document.sections.some(({ id }) => id === `answers-${activity.id}`)).toBe(true);
      for (const sheet of sheetsOf(activity)) {
        if (sheet.part === 'answers') for (const row of sheet.rows) expect(text).toContain(row.because);
        if (sheet.part === 'step-answers')
          for (const row of sheet.rows)
            expect(text).toContain(JSON.stringify(row.because ?? '').slice(1, -1));
      }
    }
  });

  test('name each work they number, once', () => {
    const numbers = [
      ...everyText(document).matchAll(/(?:work named|from memory|worked out here): (\d+(?:, \d+)*)"/g),
    ].flatMap(([, list = '']) => list.split(', ').map(Number));
    const works = section(document, 'sources')?.blocks.find(({ block }) => block === 'list');
    const named = works?.block === 'list' ? works.items : [];
    expect(new Set(named).size).toBe(named.length);
    expect(Math.max(0, ...numbers)).toBe(named.length);
  });
});

describe('what goes with a lesson', () => {
  const thoughts = (id: string): readonly string[] =>
    rowsOf(notesOf(planOf(id)), 'mistaken').map(([first = '']) => first);

  test('money is spoken of where things are swapped, and nowhere else', () => {
    expect(thoughts('round-the-fire')).toContain('There has always been money.');
    expect(thoughts('who-made-this')).not.toContain('There has always been money.');
  });

  test('a trade word that the lesson does not use brings nothing', () => {
    expect(thoughts('who-made-this')).toContain('Old stone is blunt by now.');
    const plain = planOf('two-pits');
    expect(rowsOf(notesOf(plain), 'mistaken').map(([first]) => first)).not.toContain(
      'Old stone is blunt by now.',
    );
  });

  test('words come as the band is told them: both ways for both, one way for one', () => {
    const plan = planOf('who-made-this');
    const terms = (of: Plan) =>
      section(notesOf(of), 'words')?.blocks.flatMap((block) =>
        block.block === 'terms' ? block.terms : [],
      ) ?? [];
    const pit = (of: Plan) => terms(of).find(({ term }) => term === 'pit');
    expect(pit(plan)).toMatchObject({
      means: expect.stringMatching(/people dug/),
      older: expect.stringMatching(/evidence/),
    });
    expect(pit(bandPlan(plan, '7-9'))).toEqual({ term: 'pit', means: 'A hole that people dug long ago.' });
    expect(pit(bandPlan(plan, '9-11'))?.means).toMatch(/evidence/);
  });
});

describe('what a lead writes in the head', () => {
  const notes = [
    'notes:',
    '  leave-out: [dinosaurs, hearing]',
    '  kit: [A tray of sand]',
    '  misconceptions:',
    '    - { id: pit-is-bin, thought: Pits are bins., reply: Ours was lined with clay., source: our own record }',
    '    - { thought: It is all treasure., reply: Most of it is waste. }',
  ].join('\n');
  const document = notesOf(
    planOf('who-made-this', (text) => text.replace('\nclaims:', `\n${notes}\nclaims:`)),
  );
  const rows = rowsOf(document, 'mistaken');

  test('leaves out rows of ours', () => {
    expect(rows.map(([first]) => first)).not.toContain('Archaeologists dig up dinosaurs.');
    expect(rowsOf(document, 'adaptations').map(([first]) => first)).not.toContain('Hearing');
  });

  test('takes the place of one of ours, where it stood', () => {
    const before = rowsOf(notesOf(planOf('who-made-this')), 'mistaken').map(([first]) => first);
    const place = before.indexOf('A pit is a rubbish bin.');
    // One row of ours before it is left out.
    expect(rows[place - 1]).toEqual(['Pits are bins.', 'Ours was lined with clay.']);
  });

  test('comes after ours, and says whose it is and where it comes from', () => {
    expect(rows.at(-1)).toEqual(['It is all treasure.', 'Most of it is waste.']);
    expect(everyText(document)).toContain('the lead, from our own record');
    expect(everyText(document)).toContain('A tray of sand');
  });
});

describe('the minutes outside the activities', () => {
  test.each([
    { left: 10, words: 120, opening: 3, closing: 7 },
    { left: 4, words: 400, opening: 2, closing: 2 },
    { left: 0, words: 100, opening: 0, closing: 0 },
    { left: 9, words: 0, opening: 0, closing: 9 },
  ])('$left left, $words words to read aloud: $opening and $closing', ({ left, words, opening, closing }) => {
    expect(divideRest(left, words)).toEqual({ opening, closing });
  });
});
