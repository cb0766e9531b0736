import { bundlePlayer } from '../../packs/bundle-player.ts';

/** The script of a pack as text: the Bench puts it into the packs it makes. */
export const GET = async (): Promise<Response> =>
  new Response(await bundlePlayer(process.cwd()), { headers: { 'content-type': 'text/javascript' } });
