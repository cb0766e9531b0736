import * as z from 'zod';
import type { Photo } from '../drawing/index.ts';
import { nearest } from '../lesson/nearest.ts';
import type { Fault } from '../lesson/problem.ts';
import { base64, MOST_PHOTO_BYTES, MOST_PHOTOS_BYTES, readPicture } from '../photo/index.ts';
import { photoWords } from '../words/en/photo-problems.ts';

/** What a lead says of a photograph in the site file. */
export const photoRow = z.strictObject({
  find: z.string().describe('The find it shows: P3-124.'),
  file: z
    .string()
    .regex(/^[\w-]+\.(jpe?g|png|webp)$/i, 'the name of a JPEG, PNG or WebP file: letters, digits, hyphens')
    .describe('The picture’s file, in the folder `photos` beside the site file.'),
  shows: z
    .string()
    .min(1)
    .max(300)
    .describe('What is to be seen in it, for those who hear it; not what it is, which a sort may ask.'),
  credit: z.string().min(1).max(90).describe('Who took it or owns it: stands under it wherever it is shown.'),
  'length-px': z
    .int()
    .positive()
    .optional()
    .describe('How many picture points the find’s length takes: gives a scale bar.'),
});

type PhotoRow = z.infer<typeof photoRow>;

/** The files beside a site, by name, as bytes. */
export type PhotoFiles = ReadonlyMap<string, Uint8Array>;

/** One photograph: read, with what it carried taken out; null where its file is missing or unfit, and the drawing stands instead. */
function readPhoto(
  row: PhotoRow,
  files: PhotoFiles,
): { readonly photo: Photo | null; readonly faults: readonly Omit<Fault, 'path'>[] } {
  const caution = (words: Pick<Fault, 'expected' | 'received' | 'mend'>): Omit<Fault, 'path'> => ({
    code: 'photo-unfit',
    grade: 'caution',
    ...words,
  });
  const bytes = files.get(row.file);
  if (bytes === undefined) {
    const near = nearest(row.file, [...files.keys()]);
    return { photo: null, faults: [caution(photoWords.missing(row.file, near))] };
  }
  const { picture, refusal } = readPicture(bytes);
  if (picture === null) return { photo: null, faults: [caution(photoWords.refused(refusal))] };
  if (picture.isTurned) return { photo: null, faults: [caution(photoWords.turned)] };
  const weight = picture.stripped.length;
  if (weight > MOST_PHOTO_BYTES)
    return { photo: null, faults: [caution(photoWords.heavy(weight, MOST_PHOTO_BYTES))] };
  const longerPx = Math.hypot(picture.widthPx, picture.heightPx);
  const lengthPx = row['length-px'];
  const isLong = lengthPx !== undefined && lengthPx > longerPx;
  return {
    photo: {
      address: `data:${picture.type};base64,${base64(picture.stripped)}`,
      widthPx: picture.widthPx,
      heightPx: picture.heightPx,
      shows: row.shows,
      credit: row.credit,
      ...(lengthPx === undefined || isLong ? {} : { lengthPx }),
    },
    faults: [
      ...(isLong ? [caution(photoWords.lengthBeyond(lengthPx, picture.widthPx, picture.heightPx))] : []),
      ...(picture.carries.length > 0 ? [caution(photoWords.carries(picture.carries))] : []),
    ],
  };
}

/** The photographs of a site by find, and faults by their path in the site file. */
export function readPhotos(
  rows: readonly PhotoRow[],
  files: PhotoFiles,
  finds: readonly string[],
): { readonly photos: ReadonlyMap<string, Photo>; readonly faults: readonly Fault[] } {
  const photos = new Map<string, Photo>();
  const faults: Fault[] = [];
  let letters = 0;
  for (const [index, row] of rows.entries()) {
    if (!finds.includes(row.find)) {
      const words = photoWords.findUnknown(row.find, nearest(row.find, finds));
      faults.push({ code: 'find-unknown', grade: 'error', path: ['photos', index, 'find'], ...words });
      continue;
    }
    if (photos.has(row.find)) {
      const words = photoWords.repeated(row.find);
      faults.push({ code: 'find-repeated', grade: 'error', path: ['photos', index, 'find'], ...words });
      continue;
    }
    const read = readPhoto(row, files);
    faults.push(...read.faults.map((fault) => ({ ...fault, path: ['photos', index, 'file'] })));
    if (read.photo === null) continue;
    letters += read.photo.address.length;
    // Three bytes are four letters.
    if (letters * 0.75 > MOST_PHOTOS_BYTES) {
      const words = photoWords.heavyTogether(MOST_PHOTOS_BYTES);
      faults.push({ code: 'photo-unfit', grade: 'caution', path: ['photos', index, 'file'], ...words });
      break;
    }
    photos.set(row.find, read.photo);
  }
  return { photos, faults };
}
