import { join } from 'node:path';
import { build, type Plugin } from 'esbuild';

/** Leaves style sheets out of a bundle. */
const without = (name: string, files: RegExp): Plugin => ({
  name,
  setup: (bundle) => {
    bundle.onLoad({ filter: files }, () => ({ contents: '', loader: 'css' }));
  },
});

/** The tokens name faces that devices have. */
const withoutFonts = without('without-fonts', /[/\\]fonts\.css$/);

/** Styles of pages that have no place in a frame of papers. */
const withoutPages = without('without-pages', /[/\\](?:day|home|outcomes)\.css$/);

/** Styles of pages and papers that only the site has. */
const withoutSite = without('without-site', /[/\\](?:card-backs|day|home|outcomes|station-papers)\.css$/);

async function bundled(entry: string, home: string, plugins: Plugin[]): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(home, entry)],
    absWorkingDir: home,
    bundle: true,
    write: false,
    minify: true,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    define: { 'process.env.NODE_ENV': '"production"' },
    loader: { '.woff2': 'dataurl' },
    logLevel: 'silent',
    plugins,
  });
  return outputFiles[0]?.text ?? '';
}

/** The player's script: one module with nothing to import. */
export const bundlePlayer = (home: string): Promise<string> => bundled('src/player/player.tsx', home, []);

/** The styles of a pack in one sheet, with or without the site's type faces. */
export const bundleStyles = (home: string, hasFonts: boolean): Promise<string> =>
  bundled('src/styles/site.css', home, hasFonts ? [withoutSite] : [withoutSite, withoutFonts]);

/** The script that lays out and prints the papers of a visit on the Bench: one module with nothing to import. */
export const bundlePrinting = (home: string): Promise<string> =>
  bundled('src/printing/printing.tsx', home, []);

/** The styles of the papers of a visit, with the site's type faces. */
export const bundlePaperStyles = (home: string): Promise<string> =>
  bundled('src/styles/site.css', home, [withoutPages]);
