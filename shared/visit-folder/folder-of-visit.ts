import { writeUtf8, type FolderFile } from '../zip/index.ts';
import type { CarriedVisit } from './carried-visit.ts';
import { safeName } from './safe-name.ts';

const byPath = (a: FolderFile, b: FolderFile): number => (a.path < b.path ? -1 : 1);

/**
 * A visit as the files of a content folder: laid into the folder of a site, its lesson and its finds are there.
 *
 * @example folderOfVisit({ name: 'two-pits', text: '', files: [], photos: new Map() })[0]?.path // 'lessons/two-pits.md'
 */
export const folderOfVisit = ({ name, text, files, photos }: CarriedVisit): readonly FolderFile[] =>
  [
    { path: `lessons/${safeName(name)}.md`, bytes: writeUtf8(text) },
    ...files.map(({ path, text: own }) => ({ path, bytes: writeUtf8(own) })),
    ...[...photos].map(([picture, bytes]) => ({ path: `sites/photos/${picture}`, bytes })),
  ].toSorted(byPath);
