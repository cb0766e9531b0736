import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';

/** The lesson file as it stands on the Bench. */
export const fileText = (page: Page): Locator => page.getByLabel('The lesson file as text');

/** Waits until what stands in the file has been checked, and holds what is said of it. */
export const checkedAs = (page: Page, says: string | RegExp): Promise<void> =>
  expect(page.locator('.lead-count[data-state="fresh"]')).toHaveText(says, { timeout: 20_000 });

/** The kinds of the activities in a lesson file, in its order. */
export const kindsIn = (text: string): readonly string[] =>
  [...text.matchAll(/^```([a-z]+)$/gm)].map(([, kind = '']) => kind);

/** Drafts a lesson from the finds just taken, every kind ticked, and gives back the kinds it has. */
export async function draftLesson(
  page: Page,
  { ages, minutes }: { readonly ages: readonly string[]; readonly minutes: number },
): Promise<readonly string[]> {
  const draft = page.locator('.draft');
  await page.getByText('Draft a lesson', { exact: true }).click();
  const wanted = draft.getByRole('group', { name: 'For which ages' }).getByRole('checkbox');
  for (const tick of await wanted.all()) {
    const band = (await tick.locator('xpath=..').textContent()) ?? '';
    await tick.setChecked(ages.includes(band.trim()));
  }
  const kinds = draft.getByRole('group', { name: 'Kinds of activity' }).getByRole('checkbox');
  for (const tick of await kinds.all()) await expect(tick).toBeChecked();
  await draft.getByLabel('Minutes in all').fill(String(minutes));
  await draft.getByRole('button', { name: 'Draft', exact: true }).click();
  await expect(page.getByText('A lesson is drafted.')).toBeVisible({ timeout: 60_000 });
  await expect(draft.locator('.draft-why li').first()).toBeVisible();
  return kindsIn((await draft.locator('pre.sample').textContent()) ?? '');
}

/** Begins a visit with the draft. */
export async function beginWithDraft(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Begin a visit with it' }).click();
  await expect(fileText(page)).toHaveValue(/^---\n/);
}

/** Puts in an activity of a kind, as it is offered. */
export async function putIn(page: Page, kind: string): Promise<void> {
  const part = page.locator('.add-part');
  if ((await part.getAttribute('open')) === null) await part.locator('summary').click();
  await part.getByRole('button', { name: kind, exact: true }).click();
  await expect(fileText(page)).toHaveValue(new RegExp(`\n\`\`\`${kind}\n`));
}

/** Writes one thing over another in the text of the file, as one mistypes. */
export async function mistype(page: Page, right: string, wrong: string): Promise<void> {
  const text = await fileText(page).inputValue();
  expect(text).toContain(right);
  await fileText(page).fill(text.replace(right, wrong));
}

/** Presses the mend of a problem and waits until nothing is left to mend. */
export async function mend(page: Page, code: string, write: string): Promise<void> {
  await expect(page.locator('.lead-problem code', { hasText: code })).toHaveCount(1);
  await page.getByRole('button', { name: `Mend: write “${write}”` }).click();
  try { await checkedAs(page, 'Nothing to mend.'); } catch (error) {
    console.log(await fileText(page).inputValue());
    console.log((await page.locator('.lead-problems').innerText()).slice(0, 1500));
    throw error;
  }
}

/** A file saved by a press: its name, where it lies, and what it says. */
export interface Saved {
  readonly name: string;
  readonly path: string;
  readonly text: string;
}

/** Presses a button that saves files, and waits for so many. */
export async function savedBy(page: Page, button: string, count = 1): Promise<readonly Saved[]> {
  const downloads = Array.from({ length: count }, (_, index) =>
    page.waitForEvent('download', {
      // Each waits for its own.
      predicate: (
        (seen = 0) =>
        () =>
          seen++ === index
      )(),
    }),
  );
  await page.getByRole('button', { name: button, exact: true }).click();
  return Promise.all(
    downloads.map(async (waited) => {
      const download = await waited;
      const path = await download.path();
      return { name: download.suggestedFilename(), path, text: readFileSync(path, 'utf8') };
    }),
  );
}
