import { readExif } from './exif.ts';
import { join, letters, numbersOf, type Carried, type Picture } from './picture.ts';

const SCAN = 0xda;
const END = 0xd9;
const COMMENT = 0xfe;
/** Start-of-frame marks hold the sides; C4, C8 and CC of the same range are tables. */
const isFrame = (mark: number): boolean =>
  mark >= 0xc0 && mark <= 0xcf && mark !== 0xc4 && mark !== 0xc8 && mark !== 0xcc;
const isApplication = (mark: number): boolean => mark >= 0xe0 && mark <= 0xef;

/** Of what programs write about a picture, only how its colours are meant is kept: JFIF (APP0), colour profile (APP2), Adobe (APP14). */
function isKept(mark: number, bytes: Uint8Array, from: number): boolean {
  if (mark === COMMENT) return false;
  if (!isApplication(mark)) return true;
  const name = letters(bytes, from, 5);
  return (
    (mark === 0xe0 && name === 'JFIF\0') ||
    (mark === 0xe2 && letters(bytes, from, 12) === 'ICC_PROFILE\0') ||
    (mark === 0xee && name === 'Adobe')
  );
}

/** Where the coded picture that begins at `from` ends: at a mark that is neither a stuffed zero nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let place = from;
  while (place < bytes.length) {
    place = bytes.indexOf(0xff, place);
    if (place < 0) return bytes.length;
    const mark = bytes[place + 1] ?? 0;
    if (mark !== 0 && mark !== 0xff && !(mark >= 0xd0 && mark <= 0xd7)) return place;
    place += mark === 0xff ? 1 : 2;
  }
  return bytes.length;
}

/**
 * Reads a JPEG's marks one after another; null where they do not hold together. What follows its end (a film, a second picture) is left off.
 *
 * Source: ITU-T T.81 (1992), annex B.
 */
export function readJpeg(bytes: Uint8Array): Picture | null {
  const { u16 } = numbersOf(bytes);
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  const carries = new Set<Carried>();
  let [widthPx, heightPx, isTurned] = [0, 0, false];
  let place = 2;
  while (place < bytes.length) {
    const mark = bytes[place + 1] ?? 0;
    if (bytes[place] !== 0xff) return null;
    if (mark === 0xff) {
      place += 1;
      continue;
    }
    if (mark === END) {
      if (widthPx === 0 || heightPx === 0) return null;
      kept.push(bytes.subarray(place, place + 2));
      if (place + 2 < bytes.length) carries.add('other words');
      return {
        type: 'image/jpeg',
        widthPx,
        heightPx,
        isTurned,
        carries: [...carries],
        stripped: join(kept),
      };
    }
    const next = place + 2 + u16(place + 2);
    if (u16(place + 2) < 2 || next > bytes.length) return null;
    const inside = place + 4;
    if (isFrame(mark)) [heightPx, widthPx] = [u16(inside + 1), u16(inside + 3)];
    if (isKept(mark, bytes, inside)) kept.push(bytes.subarray(place, next));
    else if (mark === 0xe1 && letters(bytes, inside, 6) === 'Exif\0\0') {
      const exif = readExif(bytes.subarray(inside, next));
      for (const carried of exif.carries) carries.add(carried);
      isTurned ||= exif.isTurned;
    } else carries.add('other words');
    place = next;
    if (mark === SCAN) {
      const end = endOfScan(bytes, next);
      kept.push(bytes.subarray(next, end));
      place = end;
    }
  }
  return null;
}
