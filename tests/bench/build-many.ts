import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

// Builds many lessons with Pitlore, and as many pages with plain Astro and a plain Preact island each, and prints the
// ratio. Whole processes, cold. `node tests/bench/build-many.ts 1000`
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

const countPages = (root: string): number =>
  readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html')).length;

const ours = join(folder, 'ours');
const ourSeconds = seconds(() =>
  spawnSync('npx', ['astro', 'build', '--outDir', ours], {
    env: { ...process.env, PITLORE_CONTENT: content },
    encoding: 'utf8',
  }),
);
const pages = countPages(ours);

// The plain site: the same number of pages, each with a heading, the same prose, and one small island on a fifth of them.
const plain = join(folder, 'plain');
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
  `---\nimport { Count } from '../Count.tsx';\nexport function getStaticPaths() {\n  return Array.from({ length: ${pages} }, (_, id) => ({ params: { id: String(id) } }));\n}\nconst { id } = Astro.params;\n---\n<html lang="en"><body><h1>Page {id}</h1><p>${'Some prose. '.repeat(30)}</p>{Number(id) % 5 === 0 && <Count client:load />}</body></html>\n`,
);
const plainSeconds = seconds(() => spawnSync('npx', ['astro', 'build'], { cwd: plain, encoding: 'utf8' }));

console.log(`${count} lessons, ${pages} pages: ${ourSeconds.toFixed(1)} s`);
console.log(`plain Astro, ${countPages(join(plain, 'dist'))} pages: ${plainSeconds.toFixed(1)} s`);
console.log(`ratio ${(ourSeconds / plainSeconds).toFixed(2)} (target: 2 at most)`);
rmSync(folder, { recursive: true });
