import { bundlePlayer, bundleStyles } from '../../packs/bundle-player.ts';
import { packPage } from '../../packs/pack-page.ts';
import { catalogues } from '../../../shared/words/index.ts';

/** A pack without a lesson: the Bench shows the lesson in it, under the pack's own policy. */
export async function GET(): Promise<Response> {
  const home = process.cwd();
  const html = await packPage({
    title: catalogues.en.bench.pageTitle,
    language: 'en',
    lesson: null,
    script: await bundlePlayer(home),
    css: await bundleStyles(home, true),
    hasFonts: true,
  });
  return new Response(html, { headers: { 'content-type': 'text/html' } });
}
