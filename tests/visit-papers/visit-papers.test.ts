import { expect, test } from 'vitest';
import { sheetsOf } from '../../shared/activities/index.ts';
import { compileLesson, handlingTables, type Plan } from '../../shared/compile/index.ts';
import { paperPurposes } from '../../shared/words/en/bench-papers.ts';
import { draftHead, signLines, signWords } from '../../shared/words/index.ts';
import { papersOf } from '../../src/components/papers.ts';
import type { PrintBlock, PrintedVisit, VisitPaper } from '../../src/printing/print-view.ts';
import { visitPapers } from '../../src/visit-papers/visit-papers.ts';
import { demoLessons, demoLibrary } from '../demo.ts';

const { safety } = demoLibrary;

const visits = demoLessons.map(({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  if (plan === null) throw new Error(`${id} does not compile`);
  return { id, plan, visit: visitPapers(plan, demoLibrary) };
});

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

function beyond(visit: PrintedVisit, path: string): VisitPaper {
  const found = visit.papers.find(({ paper }) => paper.path === path);
  if (found?.is !== 'beyond') throw new Error(`no ${path}`);
  return found.paper;
}

const blocksOf = ({ parts }: VisitPaper): readonly PrintBlock[] => parts.flatMap(({ blocks }) => blocks);

/** Rows of the tables of a paper's part, as texts. */
const rowsOf = (paper: VisitPaper, part: string): readonly (readonly string[])[] =>
  paper.parts
    .filter(({ id }) => id === part)
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.block === 'grid' ? block.rows : []))
    .map((row) => row.map(({ text }) => text));

/** Where children are at a lesson: the stations it states, and its tables of pieces. */
const stationsOf = (plan: Plan) => [...(plan.visit?.stations ?? []), ...handlingTables(plan)];

const nameOf = (kind: string): string => safety.stations.find(({ id }) => id === kind)?.name ?? kind;

test('some lesson states stations, some has a table of pieces, and most have neither', () => {
  const stated = visits.filter(({ plan }) => (plan.visit?.stations ?? []).length > 0);
  const tables = visits.filter(({ plan }) => handlingTables(plan).length > 0);
  expect(stated.length).toBeGreaterThan(0);
  expect(tables.length).toBeGreaterThan(0);
  expect(visits.length).toBeGreaterThan(stated.length + tables.length);
});

test.each(visits)('$id: the contents, then every paper the site has of it', ({ plan, visit }) => {
  const paths = papersOf(plan).map(({ path }) => path);
  expect(visit.papers.map(({ paper }) => paper.path)).toEqual(['contents', ...paths]);
  for (const path of ['safety', 'risk-assessment', 'station-cards', 'kit-list', 'signs', 'evaluation'])
    expect(paths).toContain(path);
  expect(paths.filter((path) => (paperPurposes[path] ?? '') === '')).toEqual([]);
  const listed = rowsOf(beyond(visit, 'contents'), 'contents').map(([name]) => name);
  expect(listed).toEqual(visit.papers.slice(1).map(({ paper }) => paper.name));
  expect(Object.keys(visit.feet)).toEqual(visit.papers.map(({ paper }) => paper.path));
});

test.each(visits)('$id: every station, edge and hazard stands on the safety sheet', ({ plan, visit }) => {
  const paper = beyond(visit, 'safety');
  expect(rowsOf(paper, 'stations').map(([name, children]) => [name, children])).toEqual(
    stationsOf(plan).map(({ kind, childrenAtOnce }) => [nameOf(kind), String(childrenAtOnce)]),
  );
  const said = textsIn(paper);
  expect(said).toContain(safety.caution.full);
  expect(said).toContain(safety.caution.neverLine);
  const rough = rowsOf(paper, 'adults').filter(([pupils]) => ['10', '20', '30'].includes(pupils ?? ''));
  expect(rough.every(([, adults]) => Number(adults) > 0) && rough.length === 3).toBe(true);
  const hazards = blocksOf(paper).flatMap((block) => (block.block === 'hazards' ? block.hazards : []));
  expect(hazards.length).toBeGreaterThan(3);
  for (const { name, controls, decides } of hazards) {
    const rule = safety.hazards.find((each) => each.name === name);
    expect(controls.map(({ text }) => text).toSorted()).toEqual(
      rule?.controls.map(({ text }) => text).toSorted(),
    );
    expect(decides).toContain(rule?.deferTo ?? 'nobody');
  }
});

test.each(visits)(
  '$id: the draft has every hazard of the sheet, and all that is left to complete',
  ({ visit }) => {
    const draft = beyond(visit, 'risk-assessment');
    const sheet = blocksOf(beyond(visit, 'safety')).flatMap((block) =>
      block.block === 'hazards' ? block.hazards : [],
    );
    const [risk] = blocksOf(draft).flatMap((block) => (block.block === 'risk' ? [block] : []));
    expect(risk?.hazards.map(({ name, controls, never }) => [name, controls, never])).toEqual(
      sheet.map(({ name, controls, never }) => [name, controls, never]),
    );
    expect(risk?.siteRows.length).toBeGreaterThanOrEqual(5);
    const blanks = safety.assessment.columns.filter(({ fill }) => fill === 'blank');
    expect([...(risk?.heads.wide ?? []), ...(risk?.short ?? [])].toSorted()).toEqual(
      blanks.map(({ heading }) => heading).toSorted(),
    );
    const said = textsIn(draft);
    for (const words of [...draftHead, ...signLines]) expect(said).toContain(words);
    expect(said.some((words) => words.startsWith('DRAFT. Not valid until'))).toBe(true);
  },
);

test.each(visits)('$id: a station card for each activity and each stated station', ({ plan, visit }) => {
  const paper = beyond(visit, 'station-cards');
  const cards = paper.parts.filter(({ look }) => look === 'paper-section station-card');
  expect(cards.map(({ title }) => title)).toEqual([
    ...plan.activities.map(({ title }) => title),
    ...(plan.visit?.stations ?? []).map(({ kind }) => nameOf(kind)),
  ]);
  for (const { blocks } of cards) {
    const [never] = blocks.flatMap((block) => (block.block === 'never' ? [block] : []));
    expect(never?.lines[0]).toBe(safety.caution.neverLine);
    expect(blocks.some((block) => block.block === 'station' && block.run.steps.length > 2)).toBe(true);
  }
});

test.each(visits)(
  '$id: the kit list counts for a class, and holds the kit of every station',
  ({ plan, visit }) => {
    const paper = beyond(visit, 'kit-list');
    const pencils = rowsOf(paper, 'counted').find(([thing]) => thing === 'Pencils');
    expect(pencils?.slice(1, 4)).toEqual(['10', '20', '30']);
    const items = new Set(
      blocksOf(paper).flatMap((block) =>
        block.block === 'lists' ? block.lists.flatMap((list) => list.items) : [],
      ),
    );
    for (const { kind } of stationsOf(plan))
      for (const id of safety.stations.find((each) => each.id === kind)?.kit ?? [])
        for (const item of safety.kit.find((list) => list.id === id)?.items ?? [])
          expect(items).toContain(item);
    expect(items.size).toBeGreaterThan(5);
  },
);

test.each(visits)('$id: signs and slips', ({ plan, visit }) => {
  const signs = blocksOf(beyond(visit, 'signs')).flatMap((block) =>
    block.block === 'sign' ? [block.large] : [],
  );
  for (const { title } of plan.activities) expect(signs).toContain(title);
  expect(signs.filter((large) => Object.values(signWords).includes(large)).length).toBeGreaterThan(0);
  const slips = blocksOf(beyond(visit, 'evaluation')).filter(({ block }) => block === 'pupil-slips');
  expect(slips).toHaveLength(plan.bands.length);
});

test.each(visits)(
  '$id: each reason of its answers is on the answers, and on no sheet of pupils',
  ({ plan, visit }) => {
    const reasons = plan.activities
      .flatMap(sheetsOf)
      .flatMap((sheet) => (sheet.part === 'answers' ? sheet.rows.map(({ because }) => because) : []))
      .filter((reason) => reason !== '');
    const answers = textsIn(beyond(visit, 'answers'));
    expect(reasons.filter((reason) => !answers.some((text) => text.includes(reason)))).toEqual([]);
    const inHand = textsIn(visit.papers.filter(({ paper }) => ['cards', 'pupil-sheet'].includes(paper.path)));
    expect(reasons.filter((reason) => inHand.some((text) => text.includes(reason)))).toEqual([]);
  },
);

test.each(visits)('$id: cards are all there, and each sheet of them has as many backs', ({ plan, visit }) => {
  const sheets = plan.activities.flatMap(sheetsOf);
  const made = sheets.reduce((count, sheet) => count + ('cards' in sheet ? sheet.cards.length : 0), 0);
  if (made === 0) return;
  const blocks = blocksOf(beyond(visit, 'cards'));
  const shown = blocks.flatMap((block) =>
    block.block === 'card-page' || block.block === 'cards' ? block.cards : [],
  );
  expect(shown).toHaveLength(made);
  const backed = blocks.flatMap((block, index) =>
    block.block === 'card-page' ? [[block.cards.length, blocks[index + 1]] as const] : [],
  );
  for (const [count, next] of backed) expect(next).toMatchObject({ block: 'card-backs', count });
});

test.each(visits)('$id: each drawing that is pointed to is there', ({ visit }) => {
  const ids = visit.drawings.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(pointedTo(visit.papers).filter((id) => !ids.includes(id))).toEqual([]);
});

test('a table of pieces has its helper’s card and its poster, with every piece', () => {
  const tables = visits.filter(({ plan }) => handlingTables(plan).length > 0);
  for (const { plan, visit } of tables) {
    const pieces = plan.activities
      .flatMap(sheetsOf)
      .flatMap((sheet) => (sheet.part === 'handle-notes' ? sheet.pieces : []));
    const helpers = blocksOf(beyond(visit, 'helper-card')).flatMap((block) =>
      block.block === 'helper' ? block.pieces : [],
    );
    expect(helpers.map(({ name }) => name)).toEqual(pieces.map(({ name }) => name));
    const posters = blocksOf(beyond(visit, 'table-poster')).flatMap((block) =>
      block.block === 'poster' ? block.pieces : [],
    );
    expect(posters).toHaveLength(pieces.length);
    expect(textsIn(beyond(visit, 'table-poster')).join(' ')).toContain(safety.caution.neverLine);
  }
});

test('every paper carries the line of what children never do', () => {
  const bare = visits.flatMap(({ id, visit }) =>
    visit.papers.flatMap(({ paper }) =>
      textsIn(paper).some((text) => text.includes(safety.caution.neverLine)) ? [] : [`${id} ${paper.path}`],
    ),
  );
  expect(bare).toEqual([]);
});
