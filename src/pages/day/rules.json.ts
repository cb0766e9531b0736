import { siteContent } from '../../loaders/site-content.ts';

/** The safety rules, for the Day sheet: a day is held against them in the browser. */
export async function GET(): Promise<Response> {
  const { library } = await siteContent();
  return new Response(JSON.stringify(library.safety), { headers: { 'content-type': 'application/json' } });
}
