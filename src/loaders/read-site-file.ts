import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import {
  readSite,
  type ReadFile,
  type Site,
  type TableText,
  type Vocabulary,
} from '../../shared/library/index.ts';

async function photosIn(folder: string): Promise<ReadonlyMap<string, Uint8Array>> {
  const names = existsSync(folder) ? (await readdir(folder)).toSorted() : [];
  const files = await Promise.all(
    names.map(async (name) => [name, new Uint8Array(await readFile(join(folder, name)))] as const),
  );
  return new Map(files);
}

/** The finds tables beside a site file: `wendle-marsh.*.csv`. */
export async function readTablesBeside(path: string): Promise<readonly TableText[]> {
  const folder = dirname(path);
  const stem = basename(path).replace(/\.ya?ml$/, '');
  return Promise.all(
    (await readdir(folder))
      .toSorted()
      .filter((file) => file.startsWith(`${stem}.`) && file.endsWith('.csv'))
      .map(async (file): Promise<TableText> => ({
        file: join(folder, file),
        text: await readFile(join(folder, file), 'utf8'),
      })),
  );
}

/** Reads a site file with the finds tables beside it (`wendle-marsh.*.csv`) and the pictures in the folder `photos` there. */
export async function readSiteFile(path: string, vocabulary: Vocabulary): Promise<ReadFile<Site>> {
  const folder = dirname(path);
  const tables = await readTablesBeside(path);
  return readSite(
    path,
    await readFile(path, 'utf8'),
    tables,
    vocabulary,
    await photosIn(join(folder, 'photos')),
  );
}
