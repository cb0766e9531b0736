import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { readDay } from '../../shared/library/index.ts';

/** A day that comes with the content, as it stands in its file. */
export interface LoadedDay {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

/** The day files of the content; one with errors is listed under the name of its file, and mended on the page. */
export async function demoDays(): Promise<readonly LoadedDay[]> {
  const folder = join(process.env['PITLORE_CONTENT'] ?? 'content', 'days');
  if (!existsSync(folder)) return [];
  const files = (await readdir(folder)).filter((file) => file.endsWith('.yaml')).toSorted();
  return Promise.all(
    files.map(async (file) => {
      const text = await readFile(join(folder, file), 'utf8');
      const id = basename(file, '.yaml');
      return { id, title: readDay(file, text).value?.title ?? id, text };
    }),
  );
}
