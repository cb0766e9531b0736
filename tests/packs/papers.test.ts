import { expect, test } from 'vitest';
import { sheetsOf } from '../../shared/activities/index.ts';
import { compileLesson, type Plan } from '../../shared/compile/index.ts';
import { youngest } from '../../shared/library/index.ts';
import { newDrawings } from '../../src/packs/drawings.ts';
import { lessonView } from '../../src/packs/lesson-view.ts';
import { lessonPapers } from '../../src/packs/papers/lesson-papers.ts';
import { placesOf } from '../../src/packs/papers/sheet-places.ts';
import type { PapersView } from '../../src/player/papers/paper-view.ts';
import { demoLessons, demoLibrary } from '../demo.ts';

const plans = demoLessons.map(({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  if (plan === null) throw new Error(`${id} does not compile`);
  return { id, plan };
});

const papersOf = (plan: Plan): PapersView => lessonPapers(plan, demoLibrary, newDrawings());
const titlesOf = ({ papers }: PapersView, path: string): readonly string[] =>
  papers.find((paper) => paper.path === path)?.sections.map(({ title }) => title) ?? [];

/** Every text in a value, however deep. */
const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsIn)
      : [];

/** The ids of all drawings pointed to in a value. */
const pointedTo = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null
    ? 'id' in value && 'width' in value && typeof value.id === 'string'
      ? [value.id]
      : Object.values(value).flatMap(pointedTo)
    : [];

test.each(plans)('$id: every sheet it makes stands in a paper of the pack', ({ plan }) => {
  const papers = papersOf(plan);
  const setting = { band: youngest(plan.bands), drawings: newDrawings(), stripId: 'strip' };
  const sheets = plan.activities.flatMap(sheetsOf);
  expect(sheets.length).toBeGreaterThan(0);
  for (const sheet of sheets) {
    const { cards, pupils, isInNotes = false } = placesOf(sheet, setting);
    expect(cards !== undefined || pupils !== undefined || isInNotes, sheet.part).toBe(true);
    if (cards !== undefined) expect(titlesOf(papers, 'cards'), sheet.part).toContain(sheet.title);
    if (pupils !== undefined) expect(titlesOf(papers, 'pupil-sheet'), sheet.part).toContain(sheet.title);
    if (isInNotes) expect(titlesOf(papers, 'teacher-notes'), sheet.part).toContain(sheet.title);
  }
});

test.each(plans)('$id: cards and pupil sheets hold no reason an answer gives', ({ plan }) => {
  const { papers } = papersOf(plan);
  const reasons = plan.activities
    .flatMap(sheetsOf)
    .flatMap((sheet) => (sheet.part === 'answers' ? sheet.rows.map(({ because }) => because) : []))
    .filter((reason) => reason !== '');
  const inHand = textsIn(papers.filter(({ path }) => path !== 'teacher-notes'));
  expect(reasons.filter((reason) => inHand.some((text) => text.includes(reason)))).toEqual([]);
  const inNotes = textsIn(papers.filter(({ path }) => path === 'teacher-notes'));
  expect(reasons.filter((reason) => !inNotes.some((text) => text.includes(reason)))).toEqual([]);
});

test.each(plans)(
  '$id: each drawing is in the pack once, and all that is pointed to is there',
  ({ id, plan }) => {
    const view = lessonView(id, plan, demoLibrary);
    const ids = view.drawings.map((drawing) => drawing.id);
    expect(new Set(ids).size).toBe(ids.length);
    const drawn = view.drawings.map(({ viewBox, markup }) => `${viewBox} ${markup}`);
    const asked = pointedTo([view.papers, view.parts]);
    expect(asked.filter((each) => !ids.includes(each))).toEqual([]);
    // The papers of a pack draw nothing a second time.
    const byPapers = view.drawings.filter((drawing) => /^drawing-\d+$/.test(drawing.id));
    for (const { viewBox, markup } of byPapers)
      expect(drawn.filter((each) => each === `${viewBox} ${markup}`)).toHaveLength(1);
  },
);

test('the standing caution of teacher and pupils is on the papers, or the line of what children never do', () => {
  for (const { plan } of plans)
    for (const { caution } of papersOf(plan).papers)
      expect(caution.text).toContain(demoLibrary.safety.caution.neverLine);
});
