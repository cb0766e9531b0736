import { rm, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { getManifest, injectManifest } from 'workbox-build';
import { countCopy, type CopiedFile } from './count-copy.ts';

// Run after the site is built: writes dist/offline.json, which says what the copy holds and when it was made, and
// dist/offline.js with the list of every file it keeps. SOURCE_DATE_EPOCH (seconds) names the date, for builds that
// must come out the same.
const draft = 'dist/offline.draft.js';
const kept = {
  globDirectory: 'dist',
  globPatterns: ['**/*.{html,js,css,woff2,svg,gz,webmanifest,json,csv,md}'],
  // The schemas are for an editor of lesson files, beside the program itself.
  globIgnores: ['offline*.js', 'schema/**'],
  dontCacheBustURLsMatching: /^_astro\//,
  maximumFileSizeToCacheInBytes: 8_000_000,
};
const epoch = process.env['SOURCE_DATE_EPOCH'];
const made = (epoch === undefined ? new Date() : new Date(Number(epoch) * 1000)).toISOString();

await rm('dist/offline.json', { force: true });
let files: readonly CopiedFile[] = [];
await getManifest({
  ...kept,
  // Only here a file's size is told.
  manifestTransforms: [
    (manifest) => {
      files = manifest.map(({ url, size }) => ({ url, size }));
      return { manifest };
    },
  ],
});
const copy = countCopy(files, made);
await writeFile('dist/offline.json', JSON.stringify(copy));
await build({
  entryPoints: ['src/offline/worker/worker.ts'],
  outfile: draft,
  bundle: true,
  minify: true,
  format: 'iife',
  target: 'es2022',
});
const { warnings } = await injectManifest({ ...kept, swSrc: draft, swDest: 'dist/offline.js' });
await rm(draft);
if (warnings.length > 0) throw new Error(`the offline copy would miss files: ${warnings.join('; ')}`);
process.stdout.write(
  `offline copy: ${copy.lessons} lessons, ${copy.files} files, ${Math.round(copy.bytes / 1000)} kB\n`,
);
