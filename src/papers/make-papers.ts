import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { CONTENTS, PACK, papersOf } from '../components/papers.ts';
import { folioCss } from '../components/folio-css.ts';
import type { Plan } from '../../shared/compile/index.ts';
import type { AskedPapers } from './asked.ts';
import { buildPapers } from './build-papers.ts';
import { startChromium, type Browser } from './chromium-pipe.ts';
import { printPage, type PaperSize } from './print-page.ts';

/** A paper, made: its path among the lesson's papers, its bytes, and its pages where it was printed. */
export interface MadePaper {
  readonly path: string;
  readonly bytes: string | Buffer;
  readonly pages: number | null;
}

/** The paths a lesson's papers have, the pack first. */
export const paperPathsOf = (plan: Plan): readonly string[] => [
  PACK.path,
  ...papersOf(plan).map(({ path }) => path),
];

/** What the pack can say once each part was printed: sheets in the contents, and how many a part has at each foot. */
function countedCss(plan: Plan, sheets: ReadonlyMap<string, number>): string {
  const parts = [CONTENTS, ...papersOf(plan)].map(({ path, name }) => {
    const count = sheets.get(path);
    return { path, name, ...(count === undefined ? {} : { sheets: count }) };
  });
  const counts = [...sheets].map(([path, count]) => `[data-sheets="${path}"]::after{content:"${count}"}`);
  return `${folioCss(plan.title, parts)}.contents .contents-sheets{display:table-cell}${counts.join('')}`;
}

async function printAll(
  browser: Browser,
  plan: Plan,
  pages: ReadonlyMap<string, string>,
  size: PaperSize,
  work: string,
): Promise<readonly MadePaper[]> {
  const print = async (path: string, more: string): Promise<MadePaper> => {
    const file = join(work, `${path}.html`);
    await writeFile(file, (pages.get(path) ?? '').replace('</head>', `${more}</head>`));
    const { pdf, pages: count } = await printPage(browser, pathToFileURL(file).href, size);
    return { path, bytes: pdf, pages: count };
  };
  const parts: MadePaper[] = [];
  for (const { path } of papersOf(plan)) parts.push(await print(path, ''));
  const sheets = new Map(parts.map(({ path, pages: count }) => [path, count ?? 0]));
  return [await print(PACK.path, `<style>${countedCss(plan, sheets)}</style>`), ...parts];
}

/**
 * Everything of a lesson that is printed: as PDF where there is a browser to print with, else as pages that any browser
 * prints.
 *
 * @param chromium Where that browser is, or null.
 * @param home The folder of the product.
 * @throws Error with what the build or the browser complained of.
 */
export async function makePapers(
  plan: Plan,
  asked: AskedPapers,
  {
    size,
    chromium,
    home,
  }: { readonly size: PaperSize; readonly chromium: string | null; readonly home: string },
): Promise<readonly MadePaper[]> {
  const work = await mkdtemp(join(tmpdir(), 'pitlore-papers-'));
  try {
    const pages = await buildPapers(asked, home, work);
    if (chromium === null) {
      return paperPathsOf(plan).map((path) => ({ path, bytes: pages.get(path) ?? '', pages: null }));
    }
    const browser = await startChromium(chromium, join(work, 'profile'));
    try {
      return await printAll(browser, plan, pages, size, work);
    } finally {
      await browser.close();
    }
  } finally {
    await rm(work, { recursive: true, force: true, maxRetries: 5 });
  }
}
