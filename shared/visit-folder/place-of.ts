import { innerPath } from './inner-path.ts';

/** What a file of a folder is to a visit. `loose` files lie beside one another, as when they were saved one by one. */
export interface Place {
  /** The content folder it belongs to: '' or `my-visit` or `apart/two-pits`. */
  readonly root: string;
  readonly part: 'lesson' | 'site' | 'table' | 'photo';
  readonly isLoose: boolean;
  /** Within a content folder: `sites/gravel-end.yaml`. Folders and endings in small letters. */
  readonly path: string;
}

const PARTS = [
  { part: 'lesson', folder: ['lessons'], ending: /\.(md|markdown)$/i, written: '.md' },
  { part: 'site', folder: ['sites'], ending: /\.ya?ml$/i, written: '.yaml' },
  { part: 'table', folder: ['sites'], ending: /\.csv$/i, written: '.csv' },
  { part: 'photo', folder: ['sites', 'photos'], ending: /\.(jpe?g|png|webp)$/i, written: null },
] as const;

/** Folders of a content folder, in which nothing lies loose. */
const FOLDERS = ['lessons', 'sites', 'photos', 'days', 'figures', 'curricula', 'hazards', 'finds-in'];

const endsWith = (names: readonly string[], folder: readonly string[]): boolean =>
  folder.every((name, index) => names.at(index - folder.length)?.toLowerCase() === name);

/**
 * Where a file of a folder belongs; null where it is no part of a visit, or leads out of the folder. Folders above the content
 * folder do not matter: a folder that was zipped as a whole is the same.
 *
 * @example placeOf('my-visit/Lessons/Two pits.MD') // { root: 'my-visit', part: 'lesson', isLoose: false, path: 'lessons/Two pits.md' }
 */
export function placeOf(given: string): Place | null {
  const names = innerPath(given);
  if (names === null) return null;
  const name = names.at(-1) ?? '';
  const above = names.slice(0, -1);
  const known = PARTS.find(({ ending }) => ending.test(name));
  if (known === undefined) return null;
  const { part, folder, ending, written } = known;
  const isLoose = !endsWith(above, folder);
  // A folder of pictures may lie beside loose files, too.
  const beside = part === 'photo' && endsWith(above, ['photos']) ? above.slice(0, -1) : above;
  if (isLoose && FOLDERS.includes(beside.at(-1)?.toLowerCase() ?? '')) return null;
  const root = isLoose ? beside : above.slice(0, -folder.length);
  const plain = written === null ? name : name.replace(ending, written);
  return { root: root.join('/'), part, isLoose, path: [...folder, plain].join('/') };
}
