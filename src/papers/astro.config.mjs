import { join } from 'node:path';
import { defineConfig } from 'astro/config';

// Builds the papers of one lesson and nothing else, for the verb `papers`: each page whole in itself, faces and all.
const work = process.env['PITLORE_PAPERS_WORK'] ?? '.work/papers';

export default defineConfig({
  srcDir: './src/papers',
  publicDir: './src/papers/public',
  outDir: join(work, 'out'),
  cacheDir: join(work, 'cache'),
  build: { format: 'file', inlineStylesheets: 'always' },
  devToolbar: { enabled: false },
  vite: { cacheDir: join(work, 'vite'), build: { assetsInlineLimit: 1_000_000 } },
});
