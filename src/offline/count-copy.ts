import type { Copy } from './copy.ts';

/** A file as the offline copy lists it. */
export interface CopiedFile {
  readonly url: string;
  readonly size: number;
}

/** What the words of the site say a copy holds: these pages, and the lessons with these papers. */
const PAGES = ['', 'bench/', 'day/', 'outcomes/', 'sources/', 'help/'];
const PAPERS = ['teacher-notes/', 'pupil-sheet/', 'cards/', 'answers/', 'print-pack/'];

const LESSON = /^lessons\/([^/]+)\/(?:([^/]+\/)index|index)\.html$/;

/**
 * Counts what a copy holds, for the words of the site. A lesson with problems has a page that tells them and no papers;
 * it is not counted.
 *
 * @throws Error where those words would not be true of these files.
 * @example countCopy(files, '2026-11-29T12:00:00.000Z').lessons // 13
 */
export function countCopy(files: readonly CopiedFile[], made: string): Copy {
  const urls = new Set(files.map(({ url }) => url));
  const papersOf = new Map<string, Set<string>>();
  for (const url of urls) {
    const [, id, paper] = LESSON.exec(url) ?? [];
    if (id === undefined || paper === undefined || paper === 'ages/') continue;
    papersOf.set(id, (papersOf.get(id) ?? new Set()).add(paper));
  }
  const missing = [
    ...PAGES.map((page) => `${page}index.html`),
    ...[...papersOf.keys()].flatMap((id) =>
      ['', ...PAPERS].map((paper) => `lessons/${id}/${paper}index.html`),
    ),
  ].filter((url) => !urls.has(url));
  if (missing.length > 0) throw new Error(`the offline copy would not hold ${missing.join(', ')}`);
  const bytes = files.reduce((sum, { size }) => sum + size, 0);
  return { made, lessons: papersOf.size, files: files.length, bytes };
}
