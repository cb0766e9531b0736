import { bundleStyles } from '../../packs/bundle-player.ts';

/** The styles of a pack with the site's type faces: the Bench puts them into the packs it makes. */
export const GET = async (): Promise<Response> =>
  new Response(await bundleStyles(process.cwd(), true), { headers: { 'content-type': 'text/css' } });
