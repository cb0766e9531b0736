import { mkdtempSync, rmSync } from 'node:fs';
import { copyFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import { mergeTests, type Page } from '@playwright/test';
import { kindNames } from '../../shared/activities/index.ts';
import { compileLesson, type Plan } from '../../shared/compile/index.ts';
import { MOST_KILOBYTES } from '../../src/packs/pack-size.ts';
import { finishAll } from './finishing/finish-activity.ts';
import type { PupilHands } from './finishing/pupil-hands.ts';
import { expectAsDone, savedResults } from './finishing/saved-results.ts';
import {
  beginWithDraft,
  checkedAs,
  draftLesson,
  fileText,
  kindsIn,
  mend,
  mistype,
  putIn,
  savedBy,
  type Saved,
} from './lead/build-visit.ts';
import { expectFindsAsInvented } from './lead/finds-as-invented.ts';
import { germanList, tabbedList, type MadeList } from './lead/finds-dialects.ts';
import { inventFinds, THINGS } from './lead/invented-finds.ts';
import { libraryWith } from './lead/library-with.ts';
import {
  countsOf,
  openFindsList,
  sayColumn,
  settleQuestions,
  takeFinds,
  type Asked,
  type Reply,
} from './lead/settle-finds.ts';
import { expect, SIZES, test as siteTest } from './page-under-test.ts';
import { test as packTest } from './opened-pack.ts';
import { printPaper } from './print-paper.ts';

// The whole way of somebody who has never programmed: from a finds list to answers brought back, by pressing and keying
// in alone. What is made on the way is read again here only to hold it against what was done.

const test = mergeTests(siteTest, packTest);
const folder = mkdtempSync(join(tmpdir(), 'pitlore-moonshot-'));
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

const SEED = 'moonshot';

/** What a pack is made from, and where it lies. */
interface Packed {
  readonly path: string;
  readonly plan: Plan;
  readonly finds: string;
}

/** Accessibility findings of what is on the page now. */
async function expectReadableByAll(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
}

/** As a lead knows the finds of the messy list; what they are not sure of stands as it is proposed. */
function replyByHeart({ row, says, offers }: Asked): Reply {
  if (says.includes('Axe fragment')) return { press: 'polished axe head' };
  if (says.includes('Rubber')) return 'leave the row out';
  if (row === 17 && says.includes('object')) return { write: 'scraper' };
  return { press: offers[0] ?? '' };
}

/** As a lead with the finds on the table: each is measured and named again. */
const replyFrom =
  ({ rows, doubled }: MadeList): ((asked: Asked) => Reply) =>
  ({ row, header, says, offers }) => {
    const find = rows.get(row);
    if (find === undefined) throw new Error(`row ${row} holds no find: ${says}`);
    if (doubled.has(row) && says.startsWith(`Row ${row}, Find No`)) return 'leave the row out';
    const measures: Readonly<Record<string, number>> = {
      T: find.thicknessMm,
      Br: find.widthMm,
      Reach: find.lengthMm,
    };
    const measured = measures[header];
    if (measured !== undefined) {
      const label = offers.find((offer) => new RegExp(`(^|: )${measured} mm`).test(offer));
      return label === undefined ? { write: String(measured) } : { press: label };
    }
    const named = offers.find((offer) => offer === THINGS[find.thing].label);
    return { press: named ?? offers[0] ?? '' };
  };

/** Begins a visit with a draft of the site's finds, and leaves nothing to mend. */
async function draftVisit(page: Page, ages: readonly string[], minutes: number): Promise<readonly string[]> {
  const kinds = await draftLesson(page, { ages, minutes });
  await beginWithDraft(page);
  await checkedAs(page, 'Nothing to mend.');
  return kinds;
}

/** Makes the pack, saves the lesson and its finds, and compiles these as the command line would. */
async function takePackAway(page: Page): Promise<Packed> {
  await checkedAs(page, 'Nothing to mend.');
  const pack = await saveOne(page, 'Make the pack');
  const lesson = await saveOne(page, 'Save as a file of text');
  const files = await savedBy(page, 'Save the finds as files', 2);
  // A memory stick keeps the name, which a browser goes by.
  const path = join(folder, pack.name);
  await copyFile(pack.path, path);
  // As large as it is said to be; and where that is more than a pack is held to, that is said too.
  const kilobytes = gzipSync(pack.text).length / 1000;
  const said = page.locator('.lead-page [role="status"]').first();
  await expect(said).toContainText(/ is made: \d+ kB compressed\./);
  const told = (await said.textContent()) ?? '';
  const saidKilobytes = Number(/(\d+) kB/.exec(told)?.[1]);
  expect(Math.abs(saidKilobytes - kilobytes)).toBeLessThan(2);
  expect(told.includes(`over the ${MOST_KILOBYTES} kB`)).toBe(saidKilobytes > MOST_KILOBYTES);
  const { plan, problems } = compileLesson(
    lesson.name,
    lesson.text,
    libraryWith(files),
    lesson.name.replace(/\.md$/, ''),
  );
  expect(problems).toEqual([]);
  if (plan === null) throw new Error('what was saved does not compile');
  return { path, plan, finds: files.find(({ name }) => name.endsWith('.csv'))?.text ?? '' };
}

async function saveOne(page: Page, button: string): Promise<Saved> {
  const [saved] = await savedBy(page, button);
  if (saved === undefined) throw new Error(`${button}: nothing was saved`);
  return saved;
}

/** Finishes everything in an open pack, saves the answers and holds the file against what was done. */
async function finishPack(pack: Page, plan: Plan, first: PupilHands['way']): Promise<void> {
  await pack.getByRole('button', { name: 'Save the answers as a file' }).click();
  await expect(pack.getByText('Read a record card first')).toBeVisible();
  const done = await finishAll(pack, first);
  expectAsDone(plan, await savedResults(pack), done);
}

test('from a messy finds list to a pack with every kind, finished with no signal, and its answers saved', async ({
  watched: { page },
  opened,
}) => {
  await test.step('finds in', async () => {
    await openFindsList(page, 'tests/content/finds-in/finds-as-they-come.csv');
    const { ready, waiting } = await countsOf(page);
    expect(waiting).toBeGreaterThan(0);
    for (const size of SIZES) {
      await page.setViewportSize(size);
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow, size.name).toBeLessThanOrEqual(0);
    }
    // The column that names people is taken out and put back: the questions about them go and come.
    await sayColumn(page, 'Notes', 'not used');
    expect((await countsOf(page)).ready).toBeGreaterThan(ready);
    await sayColumn(page, 'Notes', 'note');
    expect(await countsOf(page)).toEqual({ ready, waiting });
    const asked = await settleQuestions(page, replyByHeart);
    expect(asked.length).toBeGreaterThan(10);
    // Of 44 rows one is blank, one holds sums, and one was left out.
    expect(await takeFinds(page, 'Gravel End')).toBe(41);
  });

  await test.step('a draft, and what is not drafted put in', async () => {
    const drafted = await draftVisit(page, ['7-9'], 120);
    await expectReadableByAll(page);
    for (const kind of kindNames) if (!drafted.includes(kind)) await putIn(page, kind);
    expect(kindsIn(await fileText(page).inputValue()).toSorted()).toEqual(kindNames);
    await checkedAs(page, 'Nothing to mend.');
  });

  await test.step('mended', async () => {
    await mistype(page, 'of: axe-hours', 'of: axe-huors');
    await mend(page, 'word-unknown', 'axe-hours');
    await page.locator('.layer[data-part="head"] .layer-name').click();
    const head = page.locator('.layer[data-part="head"] .layer-form');
    await head.getByLabel('Title', { exact: true }).fill('A day at Gravel End');
    await expect(fileText(page)).toHaveValue(/\ntitle: "?A day at Gravel End"?\n/);
    await head.getByLabel('Site', { exact: true }).fill('gravel-ende');
    await mend(page, 'site-unknown', 'gravel-end');
  });

  await test.step('looked at, and there after a reload', async () => {
    await page.getByRole('button', { name: 'Show the page' }).click();
    await expect(page.frameLocator('.page-seen').locator('.title-block')).toContainText('Gravel End', {
      timeout: 30_000,
    });
    await expect(page.locator('[data-keeping="kept"]')).toBeVisible();
    await page.reload();
    await checkedAs(page, 'Nothing to mend.');
  });

  const { path, plan } = await test.step('packed', () => takePackAway(page));
  await page.close();

  const pack = await opened(path);
  await test.step('printed from the pack', async () => {
    const { words } = await printPaper(pack, folder, 'teacher-notes');
    expect(words).toContain('A day at Gravel End');
    expect(words).toContain('The answers, and why');
    expect(words).toContain('Children never knap');
  });
  await test.step('finished, and the answers saved', () => finishPack(pack, plan, 'keyboard'));
  await pack.getByText('Safety', { exact: true }).click();
  await expect(pack.locator('.pack-hazard').first()).toBeVisible();
  await expect(pack.getByText('Local law and your employer’s policy come first')).toBeVisible();
});

test('the same finds in a list with semicolons, commas, centimetres and German names', async ({
  watched: { page },
  opened,
}) => {
  const list = germanList(inventFinds(SEED));
  await openFindsList(page, list);
  await settleQuestions(page, replyFrom(list));
  expect(await takeFinds(page, 'Kiesende')).toBe(new Set(list.rows.values()).size);
  const kinds = await draftVisit(page, ['11-14'], 90);
  expect(kinds.length).toBeGreaterThan(2);
  const { path, plan, finds } = await takePackAway(page);
  expectFindsAsInvented(finds, list);
  await page.close();
  await finishPack(await opened(path), plan, 'touch');
});

test('the same finds between tabs, with units of their own, blanks, rows twice over and a formula', async ({
  watched: { page },
}) => {
  const list = tabbedList(inventFinds(SEED), SEED);
  await openFindsList(page, list);
  await sayColumn(page, 'Reach', 'length in mm');
  const asked = await settleQuestions(page, replyFrom(list));
  for (const cell of [' cm"', '"=1+1"', 'Small find'])
    expect(asked.some(({ says }) => says.includes(cell))).toBe(true);
  expect(await takeFinds(page, 'Tab End')).toBe(new Set(list.rows.values()).size);
  await draftVisit(page, ['9-11'], 60);
  const { finds } = await takePackAway(page);
  expectFindsAsInvented(finds, list);
});
