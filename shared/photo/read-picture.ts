import { readJpeg } from './jpeg.ts';
import { letters, type Picture } from './picture.ts';
import { readPng } from './png.ts';
import { readWebp } from './webp.ts';

/** A picture of this many points or more is refused: a cheap tablet has no room to open it. ASM. */
export const TOO_MANY_POINTS = 100_000_000;
/** As large as a photograph in a lesson may be, in bytes: sixteen such are two megabytes. ASM. */
export const MOST_PHOTO_BYTES = 120_000;
/** All photographs of a site together, in bytes. ASM. */
export const MOST_PHOTOS_BYTES = 2_000_000;

/** Why a file is not taken for a photograph. */
export type Refusal = 'empty' | 'not-a-picture' | 'other-picture' | 'broken' | 'too-many-points';

export type PictureRead =
  | { readonly picture: Picture; readonly refusal: null }
  | { readonly picture: null; readonly refusal: Refusal };

/** The beginnings of pictures that are known and not read: GIF, TIFF, BMP, HEIC and AVIF. */
const isOtherPicture = (bytes: Uint8Array): boolean =>
  letters(bytes, 0, 4) === 'GIF8' ||
  ['II*\0', 'MM\0*'].includes(letters(bytes, 0, 4)) ||
  letters(bytes, 0, 2) === 'BM' ||
  (letters(bytes, 4, 4) === 'ftyp' && /^(heic|heix|heim|mif1|msf1|avif)$/.test(letters(bytes, 8, 4)));

/**
 * Looks into a file: a JPEG, PNG or WebP is read without being opened, so that nothing in it runs and its size is known before
 * room is made for it; everything else is refused. A name's ending is never believed.
 *
 * @example readPicture(new Uint8Array()).refusal // 'empty'
 */
export function readPicture(bytes: Uint8Array): PictureRead {
  const refuse = (refusal: Refusal): PictureRead => ({ picture: null, refusal });
  if (bytes.length === 0) return refuse('empty');
  const reader =
    letters(bytes, 0, 3) === '\u00ff\u00d8\u00ff'
      ? readJpeg
      : letters(bytes, 0, 8) === '\u0089PNG\r\n\u001a\n'
        ? readPng
        : letters(bytes, 0, 4) === 'RIFF' && letters(bytes, 8, 4) === 'WEBP'
          ? readWebp
          : null;
  if (reader === null) return refuse(isOtherPicture(bytes) ? 'other-picture' : 'not-a-picture');
  const picture = reader(bytes);
  if (picture === null) return refuse('broken');
  if (picture.widthPx * picture.heightPx >= TOO_MANY_POINTS) return refuse('too-many-points');
  return { picture, refusal: null };
}
