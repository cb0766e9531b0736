import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

// Bytes of script a page carries, compressed as a server would send them. kB are 1,000 bytes.
const MOST_SCRIPT_KB = 30;
/** The Bench is the lead's own page: it carries the reader of lessons, and its worker the whole compiler. */
const MOST_BENCH_KB = 150;
const MOST_WORKER_KB = 350;

const gzipped = (bytes: Buffer | string): number => gzipSync(bytes, { level: 9 }).length;

/** Every script a page loads, and every script those import. */
function scriptsOf(html: string): ReadonlySet<string> {
  const waiting = [...html.matchAll(/(?:src|component-url|renderer-url)="([^"]+\.js)"/g)].map(
    ([, url]) => url ?? '',
  );
  const found = new Set<string>();
  while (waiting.length > 0) {
    const url = waiting.pop();
    if (url === undefined || found.has(url)) continue;
    found.add(url);
    const text = readFileSync(join('dist', url), 'utf8');
    for (const [, other] of text.matchAll(/(?:from|import)\s*\(?["']\.\/([^"']+\.js)["']/g))
      waiting.push(`/_astro/${other ?? ''}`);
  }
  return found;
}

/** The copy a device keeps for no signal: a lead may have to fetch it through a phone. Bytes as kept, not as sent. */
const MOST_COPY_KB = 15_000;

let isOver = false;
const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.html'),
);
for (const page of pages.toSorted()) {
  const html = readFileSync(join('dist', page), 'utf8');
  const inline = [...html.matchAll(/<script(?![^>]*application\/)[^>]*>([^<]+)<\/script>/g)].map(
    ([, text]) => text ?? '',
  );
  const files = [...scriptsOf(html)];
  const bytes =
    files.reduce((total, url) => total + gzipped(readFileSync(join('dist', url))), 0) +
    gzipped(inline.join('\n'));
  const kB = files.length + inline.length === 0 ? 0 : bytes / 1000;
  const isPaper = /(?:teacher-notes|cards|pupil-sheet|answers|sources|help|drawings)\//.test(page);
  // Frames of the Bench hold their script inline: preview.html is a pack, and held to a pack's size; papers.html is fetched
  // when papers are wanted.
  if (page === 'bench/preview.html' || page === 'bench/papers.html') continue;
  const isBench = page === 'bench/index.html';
  const most = isPaper ? 0 : isBench ? MOST_BENCH_KB : MOST_SCRIPT_KB;
  if (kB > most) isOver = true;
  console.log(
    `${kB.toFixed(1).padStart(6)} kB script  ${(gzipped(html) / 1000).toFixed(1).padStart(6)} kB page  ${page}${kB > most ? `  over ${most} kB` : ''}`,
  );
}
for (const file of readdirSync('dist/_astro').filter((name) => name.startsWith('worker-'))) {
  const kB = gzipped(readFileSync(join('dist/_astro', file))) / 1000;
  if (kB > MOST_WORKER_KB) isOver = true;
  console.log(
    `${kB.toFixed(1).padStart(6)} kB script  of the Bench’s worker, not waited for${kB > MOST_WORKER_KB ? `  over ${MOST_WORKER_KB} kB` : ''}`,
  );
}
// Written by src/offline/build.ts of the same build.
const { bytes } = JSON.parse(readFileSync('dist/offline.json', 'utf8')) as { readonly bytes: number };
const copyKB = bytes / 1000;
if (copyKB > MOST_COPY_KB) isOver = true;
console.log(
  `${copyKB.toFixed(1).padStart(6)} kB kept for no signal${copyKB > MOST_COPY_KB ? `  over ${MOST_COPY_KB} kB` : ''}`,
);
process.exitCode = isOver ? 1 : 0;
