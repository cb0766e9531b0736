import { readFiles, readPhotos } from '../../loaders/read-files.ts';
import { siteContent } from '../../loaders/site-content.ts';
import type { BenchContent } from '../../bench/content.ts';

/** The files the site was made from, for the Bench: it reads them again in the browser. */
export async function GET(): Promise<Response> {
  const folder = process.env['PITLORE_CONTENT'] ?? 'content';
  const { lessons } = await siteContent();
  const files = await readFiles(folder);
  const content: BenchContent = {
    files,
    home: folder === 'content' ? null : await readFiles('content'),
    photos: Object.fromEntries(
      [...(await readPhotos(folder))].map(([name, bytes]) => [name, Buffer.from(bytes).toString('base64')]),
    ),
    lessons: lessons.map(({ id, title, text }) => ({ id, title: title ?? id, text })),
  };
  return new Response(JSON.stringify(content), { headers: { 'content-type': 'application/json' } });
}
