import { readExif } from './exif.ts';
import { join, letters, numbersOf, type Carried, type Picture } from './picture.ts';

/** The chunks that are the picture and how its colours are meant; all others say something about it. */
const KEPT: ReadonlySet<string> = new Set([
  'IHDR',
  'PLTE',
  'IDAT',
  'IEND',
  'tRNS',
  'cHRM',
  'gAMA',
  'iCCP',
  'sBIT',
  'sRGB',
]);
const CARRIED: ReadonlyMap<string, Carried> = new Map([['tIME', 'time']]);

/**
 * Reads a PNG's chunks; null where they do not hold together.
 *
 * Source: W3C, Portable Network Graphics (PNG) Specification, third edition 2025, sections 5 and 11.
 */
export function readPng(bytes: Uint8Array): Picture | null {
  const { u32 } = numbersOf(bytes);
  const kept: Uint8Array[] = [bytes.subarray(0, 8)];
  const carries = new Set<Carried>();
  let isTurned = false;
  let place = 8;
  if (letters(bytes, 12, 4) !== 'IHDR') return null;
  const [widthPx, heightPx] = [u32(16), u32(20)];
  while (place < bytes.length) {
    const name = letters(bytes, place + 4, 4);
    const next = place + 12 + u32(place);
    if (next > bytes.length) return null;
    if (KEPT.has(name)) kept.push(bytes.subarray(place, next));
    else if (name === 'eXIf') {
      const exif = readExif(bytes.subarray(place + 8, next - 4));
      for (const carried of exif.carries) carries.add(carried);
      isTurned ||= exif.isTurned;
    } else carries.add(CARRIED.get(name) ?? 'other words');
    place = next;
    if (name === 'IEND') {
      if (place < bytes.length) carries.add('other words');
      return widthPx === 0 || heightPx === 0
        ? null
        : { type: 'image/png', widthPx, heightPx, isTurned, carries: [...carries], stripped: join(kept) };
    }
  }
  return null;
}
