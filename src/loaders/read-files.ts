import { access, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ContentFile } from '../../shared/library/index.ts';

/** What a library is read from; other files of a content folder (lessons, days) are read by others. */
const FOLDERS: readonly { readonly folder: string; readonly endings: readonly string[] }[] = [
  { folder: '.', endings: ['.yaml'] },
  { folder: 'figures', endings: ['.yaml'] },
  { folder: 'hazards', endings: ['.yaml'] },
  { folder: 'curricula', endings: ['.yaml'] },
  { folder: 'finds-in', endings: ['.yaml'] },
  { folder: 'sites', endings: ['.yaml', '.csv'] },
];

const isThere = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

async function readFolder(
  content: string,
  folder: string,
  endings: readonly string[],
): Promise<readonly ContentFile[]> {
  const place = join(content, folder);
  if (!(await isThere(place))) return [];
  const names = (await readdir(place)).filter((name) => endings.some((ending) => name.endsWith(ending)));
  return Promise.all(
    names.toSorted().map(async (name) => ({
      path: folder === '.' ? name : `${folder}/${name}`,
      file: join(place, name),
      text: await readFile(join(place, name), 'utf8'),
    })),
  );
}

/** The files of a content folder that a library is read from, as text; [] where the folder holds none. */
export async function readFiles(content: string): Promise<readonly ContentFile[]> {
  const read = await Promise.all(FOLDERS.map(({ folder, endings }) => readFolder(content, folder, endings)));
  return read.flat();
}

/** The pictures in `sites/photos` of a content folder, by name. */
export async function readPhotos(content: string): Promise<ReadonlyMap<string, Uint8Array>> {
  const place = join(content, 'sites/photos');
  if (!(await isThere(place))) return new Map();
  const names = (await readdir(place)).toSorted();
  const files = await Promise.all(
    names.map(async (name) => [name, new Uint8Array(await readFile(join(place, name)))] as const),
  );
  return new Map(files);
}
