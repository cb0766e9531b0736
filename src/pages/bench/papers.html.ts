import { bundlePaperStyles, bundlePrinting } from '../../packs/bundle-player.ts';
import { packPage } from '../../packs/pack-page.ts';
import { catalogues } from '../../../shared/words/index.ts';

/** A page for the papers of a visit, with none in it: the Bench tells it which to show and to print. */
export async function GET(): Promise<Response> {
  const home = process.cwd();
  const html = await packPage({
    title: catalogues.en.printPack.pack,
    language: 'en',
    lesson: null,
    script: await bundlePrinting(home),
    css: await bundlePaperStyles(home),
    hasFonts: true,
  });
  return new Response(html, { headers: { 'content-type': 'text/html' } });
}
