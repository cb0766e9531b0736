import { expect, type Page } from '@playwright/test';

/** A question of finds in, as the page asks it. */
export interface Asked {
  /** As the spreadsheet numbers it. */
  readonly row: number;
  readonly header: string;
  readonly says: string;
  /** What can be pressed. */
  readonly offers: readonly string[];
}

/** What the lead does with a question. */
export type Reply = { readonly press: string } | { readonly write: string } | 'leave the row out';

/** More questions than a list of some fifty rows can ask. */
const MOST = 90;

const panel = (page: Page) => page.locator('.finds-in');
const first = (page: Page) => panel(page).locator('.question').first();

/** The counts and every question shown: what changes once an answer has been read. */
const standing = (page: Page): Promise<string> =>
  panel(page).evaluate((element) =>
    [...element.querySelectorAll('strong, [role="status"], .question')]
      .map((each) => each.textContent ?? '')
      .join('\n'),
  );

/** The question asked first, or null where none is left. */
async function askedFirst(page: Page): Promise<Asked | null> {
  if ((await first(page).count()) === 0) return null;
  return first(page).evaluate((question) => {
    const [, row = '', header = ''] =
      /^Row (\d+), (.*)$/.exec(question.querySelector('.quiet')?.textContent ?? '') ?? [];
    const offers = [...question.querySelectorAll('.lead-acts > .press')];
    return {
      row: Number(row),
      header,
      says: question.querySelector('p')?.textContent ?? '',
      offers: offers.map((offer) => offer.textContent ?? ''),
    };
  });
}

/** Does something to the list and waits until it has been read again. */
async function andRead(page: Page, act: () => Promise<unknown>): Promise<void> {
  const before = await standing(page);
  await act();
  await expect.poll(() => standing(page), { timeout: 20_000 }).not.toBe(before);
}

/** Opens a finds list on the Bench and waits until it is read. */
export async function openFindsList(
  page: Page,
  list: string | { readonly name: string; readonly text: string },
): Promise<void> {
  await page.goto('/bench/');
  await page.getByText('Finds in', { exact: true }).click();
  await page
    .getByLabel('Open a finds list')
    .setInputFiles(
      typeof list === 'string'
        ? list
        : { name: list.name, mimeType: 'text/csv', buffer: Buffer.from(list.text) },
    );
  await expect(panel(page).locator('strong').first()).toContainText('rows', { timeout: 20_000 });
}

/** How many rows are ready, and how many wait. */
export async function countsOf(page: Page): Promise<{ readonly ready: number; readonly waiting: number }> {
  const [, ready = '', waiting = ''] =
    /: (\d+) ready, .*\((\d+) of them wait/.exec(
      (await panel(page).locator('strong').first().textContent()) ?? '',
    ) ?? [];
  return { ready: Number(ready), waiting: Number(waiting) };
}

/** Says what a column holds, as it is named in the list. */
export const sayColumn = (page: Page, header: string, holds: string): Promise<void> =>
  andRead(page, () =>
    page.getByLabel(`What ${header} holds`, { exact: true }).selectOption({ label: holds }),
  );

/** Settles question after question until none is left; gives back what was asked. */
export async function settleQuestions(page: Page, reply: (asked: Asked) => Reply): Promise<readonly Asked[]> {
  const settled: Asked[] = [];
  for (let asked = await askedFirst(page); asked !== null; asked = await askedFirst(page)) {
    if (settled.length === MOST) throw new Error(`questions without end: ${JSON.stringify(asked)}`);
    const answer = reply(asked);
    const question = first(page);
    await andRead(page, async () => {
      if (answer === 'leave the row out')
        await question.getByRole('button', { name: 'Leave the row out' }).click();
      else if ('press' in answer)
        await question.getByRole('button', { name: answer.press, exact: true }).first().click();
      else {
        await question.getByLabel('Another answer').fill(answer.write);
        await question.getByRole('button', { name: 'Say so' }).click();
      }
    });
    settled.push(asked);
  }
  await expect(page.getByText('No questions left.')).toBeVisible();
  return settled;
}

/** Names the site and takes its finds; gives back how many. */
export async function takeFinds(page: Page, site: string): Promise<number> {
  await page.getByLabel('What is the site called?').fill(site);
  const take = page.getByRole('button', { name: /^Take the \d+ finds$/ });
  // Until the name has been read, the finds would be those of the name before.
  await expect(take).toBeEnabled();
  const [, count = ''] = /(\d+)/.exec((await take.textContent()) ?? '') ?? [];
  await take.click();
  await expect(page.getByText(`The finds of ${site} are on the bench`)).toBeVisible();
  return Number(count);
}
