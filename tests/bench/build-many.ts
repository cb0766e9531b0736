import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';

// Builds many lessons with Pitlore, and as many pages with plain Astro: once bare (a heading and a paragraph), once
// with pages as heavy as ours, since most of the time of either goes into bytes. Whole processes, cold. Prints ratios.
// `node tests/bench/build-many.ts 1000`
const count = Number(process.argv[2] ?? 1000);
mkdirSync('.work', { recursive: true });
const folder = mkdtempSync(join('.work', 'many-'));
const demo = readFileSync('content/lessons/who-made-this.md', 'utf8');

const content = join(folder, 'content');
cpSync('content', content, { recursive: true });
for (let lesson = 0; lesson < count; lesson += 1) {
  writeFileSync(
    join(content, 'lessons', `made-${lesson}.md`),
    demo.replace('title: Who made this?', `title: Who made this, ${lesson}?`),
  );
}

function seconds(run: () => { readonly status: number | null; readonly stderr: string }): number {
  const start = performance.now();
  const { status, stderr } = run();
  if (status !== 0) throw new Error(stderr);
  return (performance.now() - start) / 1000;
}

const pagesOf = (root: string): readonly string[] =>
  readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html'));

const ours = join(folder, 'ours');
const ourSeconds = seconds(() =>
  spawnSync('npx', ['astro', 'build', '--outDir', ours], {
    env: { ...process.env, PITLORE_CONTENT: content },
    encoding: 'utf8',
  }),
);
const files = pagesOf(ours);
const pages = files.length;
const bytesPerPage = files.reduce((total, file) => total + statSync(join(ours, file)).size, 0) / pages;

/** Seconds to build plain pages of about this many bytes of ready HTML, a small island on a fifth of them. */
function plainSeconds(name: string, bytes: number): number {
  const plain = join(folder, name);
  mkdirSync(join(plain, 'src/pages'), { recursive: true });
  writeFileSync(
    join(plain, 'package.json'),
    '{ "name": "plain", "type": "module", "dependencies": { "astro": "*", "@astrojs/preact": "*", "preact": "*" } }',
  );
  writeFileSync(
    join(plain, 'astro.config.mjs'),
    "import preact from '@astrojs/preact';\nexport default { integrations: [preact()], devToolbar: { enabled: false } };\n",
  );
  writeFileSync(
    join(plain, 'src/Count.tsx'),
    "import { useState } from 'preact/hooks';\nexport function Count() {\n  const [count, set] = useState(0);\n  return <button onClick={() => set(count + 1)}>{count}</button>;\n}\n",
  );
  writeFileSync(
    join(plain, 'src/pages/[id].astro'),
    [
      '---',
      "import { Count } from '../Count.tsx';",
      'export function getStaticPaths() {',
      `  return Array.from({ length: ${pages} }, (_, id) => ({ params: { id: String(id) } }));`,
      '}',
      'const { id } = Astro.params;',
      `const html = '<p>Some prose.</p>'.repeat(${Math.max(1, Math.round(bytes / 18))});`,
      '---',
      '<html lang="en"><body><h1>Page {id}</h1><div set:html={html} />{Number(id) % 5 === 0 && <Count client:load />}</body></html>',
      '',
    ].join('\n'),
  );
  const taken = seconds(() => spawnSync('npx', ['astro', 'build'], { cwd: plain, encoding: 'utf8' }));
  if (pagesOf(join(plain, 'dist')).length !== pages) throw new Error('the plain site has other pages');
  return taken;
}

const bare = plainSeconds('bare', 300);
const heavy = plainSeconds('heavy', bytesPerPage);
console.log(
  `${count} lessons, ${pages} pages of ${Math.round(bytesPerPage / 1000)} kB: ${ourSeconds.toFixed(1)} s`,
);
console.log(`plain Astro, bare pages: ${bare.toFixed(1)} s, ratio ${(ourSeconds / bare).toFixed(2)}`);
console.log(
  `plain Astro, pages as heavy: ${heavy.toFixed(1)} s, ratio ${(ourSeconds / heavy).toFixed(2)} (target: 2 at most)`,
);
rmSync(folder, { recursive: true });
