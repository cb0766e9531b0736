import { join } from 'node:path';
import { build, type Plugin } from 'esbuild';

/** Leaves the type faces out: the tokens name faces that devices have. */
const withoutFonts: Plugin = {
  name: 'without-fonts',
  setup: (bundle) => {
    bundle.onLoad({ filter: /[/\\]fonts\.css$/ }, () => ({ contents: '', loader: 'css' }));
  },
};

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

/** The site's styles in one sheet, with or without its type faces. */
export const bundleStyles = (home: string, hasFonts: boolean): Promise<string> =>
  bundled('src/styles/site.css', home, hasFonts ? [] : [withoutFonts]);
