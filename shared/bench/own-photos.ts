import type { ContentFile, PhotoFiles } from '../library/index.ts';
import { MOST_PHOTOS_BYTES, readPicture } from '../photo/index.ts';
import type { OwnFiles } from './own-files.ts';
import { siteFileOf, siteFiles } from './own-site.ts';
import { photoRows, removePhotoRow, setPhotoRow, type PhotoRow } from './photo-rows.ts';

/** A photograph of the visit's own files: its row, and its bytes; null where its file is not there. */
export interface OwnPhoto extends PhotoRow {
  readonly site: string;
  readonly bytes: Uint8Array | null;
}

/** A photograph to be put in. */
export interface PhotoToPut extends Omit<PhotoRow, 'file'> {
  readonly site: string;
  readonly bytes: Uint8Array;
  /** Where it stood before, when its words or its find are changed; null for a new one. */
  readonly from: { readonly site: string; readonly find: string } | null;
}

export type PutPhoto =
  | { readonly own: OwnFiles }
  | {
      readonly own: null;
      /** Its site is not among the files, the site file cannot be written, or the site's photographs would be too heavy. */
      readonly fault: 'no-site' | 'unwritten' | 'too-heavy';
    };

/** What a picture's address holds beside the picture, in bytes: "data:image/jpeg;base64," and what is filled up. */
const ADDRESS_BYTES = 24;

/** Every photograph that the visit's own site files name, in their order. */
export const ownPhotos = ({ files, photos }: OwnFiles): readonly OwnPhoto[] =>
  siteFiles(files).flatMap(({ site, file }) =>
    photoRows(file.text).map((row) => ({ ...row, site, bytes: photos.get(row.file) ?? null })),
  );

/** What the photographs of a site weigh together, as they are carried in a lesson, in bytes. */
export const photosWeight = (photos: readonly OwnPhoto[], site: string): number =>
  photos
    .filter((photo) => photo.site === site && photo.bytes !== null)
    .reduce((sum, { bytes }) => sum + (bytes?.length ?? 0) + ADDRESS_BYTES, 0);

const ENDINGS = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' } as const;

/** A name for a photograph that no other has: its site and its find. */
function nameFor({ site, find, bytes }: PhotoToPut, taken: ReadonlySet<string>): string {
  const { picture } = readPicture(bytes);
  const ending = ENDINGS[picture?.type ?? 'image/jpeg'];
  const stem = `${site}-${find}`.replaceAll(/[^\w-]/g, '-');
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? `${stem}.${ending}` : `${stem}-${number}.${ending}`;
    if (!taken.has(name)) return name;
  }
}

const withText = (files: readonly ContentFile[], path: string, text: string): readonly ContentFile[] =>
  files.map((file) => (file.path === path ? { ...file, text } : file));

/** Files of photographs without those of these names that no row names any more. */
function withoutUnused({ files, photos }: OwnFiles, names: readonly string[]): PhotoFiles {
  const named = new Set(ownPhotos({ files, photos }).map(({ file }) => file));
  return new Map([...photos].filter(([name]) => !names.includes(name) || named.has(name)));
}

/** The own files without the row of a find's photograph, and without its file where no other row names it; null where it has none. */
export function takeOutPhoto(own: OwnFiles, site: string, find: string): OwnFiles | null {
  const file = siteFileOf(own.files, site);
  if (file === null) return null;
  const freed = photoRows(file.text).flatMap((row) => (row.find === find ? [row.file] : []));
  const text = removePhotoRow(file.text, find);
  if (text === null) return null;
  const files = withText(own.files, file.path, text);
  return { files, photos: withoutUnused({ files, photos: own.photos }, freed) };
}

/**
 * Puts a photograph into the visit's own files, in the place of the one its find has: the row in the site file, the
 * picture by a name of its own. Where it stood under another find, it is taken out there.
 *
 * @example putPhoto(own, { site: 'a', find: 'P1-1', bytes, shows: 'a blade', credit: 'A', lengthPx: null, from: null })
 */
export function putPhoto(own: OwnFiles, photo: PhotoToPut): PutPhoto {
  const { site, find, bytes, from } = photo;
  const isMoved = from !== null && (from.site !== site || from.find !== find);
  const base = isMoved ? (takeOutPhoto(own, from.site, from.find) ?? own) : own;
  const file = siteFileOf(base.files, site);
  if (file === null) return { own: null, fault: 'no-site' };
  const all = ownPhotos(base);
  const old = all.find((each) => each.site === site && each.find === find);
  const rest = all.filter((each) => each !== old);
  const weight = photosWeight([...rest, { ...photo, file: '', bytes }], site);
  if (weight > MOST_PHOTOS_BYTES) return { own: null, fault: 'too-heavy' };
  const isKept = old !== undefined && old.bytes === bytes;
  const isFreed = (name: string): boolean => name === old?.file && !rest.some((each) => each.file === name);
  const taken = new Set(
    [...base.photos.keys(), ...rest.map((each) => each.file)].filter((name) => !isFreed(name)),
  );
  const name = isKept ? old.file : nameFor(photo, taken);
  const { shows, credit, lengthPx } = photo;
  const text = setPhotoRow(file.text, { find, file: name, shows, credit, lengthPx });
  if (text === null) return { own: null, fault: 'unwritten' };
  const files = withText(base.files, file.path, text);
  const photos = new Map([...base.photos, [name, bytes] as const]);
  const freed = old === undefined || old.file === name ? [] : [old.file];
  return { own: { files, photos: withoutUnused({ files, photos }, freed) } };
}

/**
 * Own files after some were written anew, with what was said of photographs carried over into site files that lost it: no
 * picture is lost because its finds were taken again.
 *
 * @param before The own files as they were.
 */
export function carryPhotos(before: OwnFiles, after: OwnFiles): OwnFiles {
  let files = after.files;
  for (const { site, bytes: _bytes, ...row } of ownPhotos(before)) {
    const file = siteFileOf(files, site);
    if (file === null || photoRows(file.text).some(({ find }) => find === row.find)) continue;
    const text = setPhotoRow(file.text, row);
    if (text !== null) files = withText(files, file.path, text);
  }
  return { ...after, files };
}
