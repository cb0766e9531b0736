import { bundleStyles } from '../../packs/bundle-player.ts';

/** The styles of a pack without the site's type faces: the Bench puts them into the packs it makes. */
export const GET = async (): Promise<Response> =>
  new Response(await bundleStyles(process.cwd(), false), { headers: { 'content-type': 'text/css' } });
