import type { ContentFile, PhotoFiles } from '../library/index.ts';
import { slug } from '../library/slug.ts';
import { readPicture, type Refusal } from '../photo/index.ts';
import { readUtf8, type FolderFile } from '../zip/index.ts';
import type { CarriedVisit } from './carried-visit.ts';
import { innerPath, isLeavings } from './inner-path.ts';
import { MOST_LESSON_BYTES } from './limits.ts';
import { placeOf, type Place } from './place-of.ts';
import { siteNamed, sitesOf } from './sites-of.ts';

/** Why a file of a folder is in no visit. */
export type WhyLeft =
  | 'outside'
  | 'no-part'
  | 'no-text'
  | 'too-long'
  | 'twice'
  | 'no-lesson'
  | 'not-named'
  | 'photo-name'
  | 'photo-turned'
  | Refusal;

export interface LeftFile {
  readonly path: string;
  readonly why: WhyLeft;
}

/** The visits of a folder, and each of its files that is in none of them. */
export interface FolderRead {
  readonly visits: readonly CarriedVisit[];
  readonly left: readonly LeftFile[];
}

/** What is found under one content folder; each thing with the path it was given at. */
interface Group {
  readonly lessons: { readonly name: string; readonly text: string }[];
  readonly files: (ContentFile & { readonly given: string })[];
  readonly photos: Map<string, { readonly bytes: Uint8Array; readonly given: string }>;
}

/** Photographs that a site file can name. */
const PHOTO_NAME = /^[\w-]+\.(jpe?g|png|webp)$/i;

/** A name that the Bench made stays as it is; one that a person or a system wrote is made into such a name. */
function nameOf(stem: string): string {
  const name = slug(stem) === stem ? stem : slug(stem.normalize('NFC'));
  return name === '' ? 'lesson' : name;
}

/** Why a file that is no part of a visit stays out; null for what is passed over without a word. */
function whyNoPart(path: string): WhyLeft | null {
  const names = innerPath(path);
  if (names === null) return 'outside';
  return isLeavings(names) ? null : 'no-part';
}

/** True for files that `visitsOfFolder` would look into. */
export const isPartOfVisit = (path: string): boolean => {
  const names = innerPath(path);
  return names !== null && !isLeavings(names) && placeOf(path) !== null;
};

/** Files that are not looked into, with why; those that nobody misses are passed over. */
export const leftUnread = (paths: readonly string[]): readonly LeftFile[] =>
  paths.flatMap((path) => {
    const why = whyNoPart(path);
    return why === null ? [] : [{ path, why }];
  });

/** Puts a file where it belongs in its group, or says why not. */
function sortIn(
  group: Group,
  { path, part, isLoose }: Place,
  { path: given, bytes }: FolderFile,
): WhyLeft | null {
  const name = path.split('/').at(-1) ?? path;
  if (part === 'photo') {
    if (!PHOTO_NAME.test(name)) return 'photo-name';
    if (group.photos.has(name)) return 'twice';
    const { picture, refusal } = readPicture(bytes);
    if (picture === null) return refusal;
    // What says that it must be turned is taken out with the rest: it would lie on its side.
    if (picture.isTurned) return 'photo-turned';
    group.photos.set(name, { bytes: picture.stripped, given });
    return null;
  }
  if (part === 'lesson' && bytes.length > MOST_LESSON_BYTES) return 'too-long';
  const text = readUtf8(bytes)?.replaceAll(/\r\n?/g, '\n');
  if (text === undefined) return 'no-text';
  if (part === 'lesson') {
    if (isLoose && !text.startsWith('---\n')) return 'no-part';
    const lesson = { name: nameOf(name.slice(0, -'.md'.length)), text };
    if (group.lessons.some((each) => each.name === lesson.name && each.text === text)) return 'twice';
    group.lessons.push(lesson);
    return null;
  }
  if (isLoose && part === 'site' && !/^pits[ \t]*:/m.test(text)) return 'no-part';
  if (group.files.some((each) => each.path === path)) return 'twice';
  group.files.push({ path, file: name, text, given });
  return null;
}

/** Sorts files under their content folders. */
function sortOut(files: readonly FolderFile[]): {
  readonly groups: readonly Group[];
  readonly left: LeftFile[];
} {
  const groups = new Map<string, Group>();
  const left: LeftFile[] = [];
  for (const file of files) {
    const place = isPartOfVisit(file.path) ? placeOf(file.path) : null;
    if (place === null) {
      left.push(...leftUnread([file.path]));
      continue;
    }
    const group = groups.get(place.root) ?? { lessons: [], files: [], photos: new Map() };
    groups.set(place.root, group);
    const why = sortIn(group, place, file);
    if (why !== null) left.push({ path: file.path, why });
  }
  return { groups: [...groups.values()], left };
}

const byPath = (a: ContentFile, b: ContentFile): number => (a.path < b.path ? -1 : 1);

const plain = (files: Group['files']): readonly ContentFile[] =>
  files.map(({ path, file, text }) => ({ path, file, text })).toSorted(byPath);

/** The visits of one content folder. A lesson alone has all that lies there; of several, each has the site that it names. */
function visitsOf({ lessons, files, photos }: Group): FolderRead {
  const all: PhotoFiles = new Map([...photos].map(([name, { bytes }]) => [name, bytes]));
  const given = [...files, ...photos.values()].map((each) => each.given);
  if (lessons.length === 0) return { visits: [], left: given.map((path) => ({ path, why: 'no-lesson' })) };
  if (lessons.length === 1)
    return { visits: lessons.map((lesson) => ({ ...lesson, files: plain(files), photos: all })), left: [] };
  const sites = sitesOf(plain(files), all);
  const visits = lessons.map((lesson): CarriedVisit => {
    const named = siteNamed(lesson.text);
    const site = sites.find(({ id }) => id === named);
    return { ...lesson, files: site?.files.toSorted(byPath) ?? [], photos: site?.photos ?? new Map() };
  });
  const isIn = (path: string): boolean =>
    visits.some((visit) => visit.files.some((file) => file.path === path));
  const isShown = (name: string): boolean => visits.some((visit) => visit.photos.has(name));
  return {
    visits,
    left: [
      ...files
        .filter(({ path }) => !isIn(path))
        .map(({ given: path }): LeftFile => ({ path, why: 'not-named' })),
      ...[...photos]
        .filter(([name]) => !isShown(name))
        .map(([, { given: path }]): LeftFile => ({ path, why: 'not-named' })),
    ],
  };
}

/**
 * The visits of a folder's files, however it was made: a zip of ours, a content folder, or such a folder zipped again with
 * other folders above it. Nothing is left out without a word.
 */
export function visitsOfFolder(files: readonly FolderFile[]): FolderRead {
  const sorted = files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  const { groups, left } = sortOut(sorted);
  const read = groups.map(visitsOf);
  return {
    visits: read.flatMap(({ visits }) => visits),
    left: [...left, ...read.flatMap((each) => each.left)],
  };
}
