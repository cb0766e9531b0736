import { rm } from 'node:fs/promises';
import { build } from 'esbuild';
import { injectManifest } from 'workbox-build';

// Run after the site is built: writes dist/offline.js with the list of every file it keeps.
const draft = 'dist/offline.draft.js';
await build({
  entryPoints: ['src/offline/worker/worker.ts'],
  outfile: draft,
  bundle: true,
  minify: true,
  format: 'iife',
  target: 'es2022',
});
const { count, size, warnings } = await injectManifest({
  swSrc: draft,
  swDest: 'dist/offline.js',
  globDirectory: 'dist',
  globPatterns: ['**/*.{html,js,css,woff2,svg,wasm,webmanifest,json,csv,md}'],
  globIgnores: ['offline*.js'],
  dontCacheBustURLsMatching: /^_astro\//,
  maximumFileSizeToCacheInBytes: 8_000_000,
});
await rm(draft);
if (warnings.length > 0) throw new Error(`the offline copy would miss files: ${warnings.join('; ')}`);
process.stdout.write(`offline copy: ${count} files, ${Math.round(size / 1000)} kB\n`);
