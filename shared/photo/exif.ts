import { letters, numbersOf, type Carried } from './picture.ts';

const TAGS: ReadonlyMap<number, Carried> = new Map([
  [0x010f, 'device'], // Make
  [0x0110, 'device'], // Model
  [0x0131, 'device'], // Software
  [0x0132, 'time'], // DateTime
  [0x8825, 'place'], // GPS information
  [0x010e, 'other words'], // ImageDescription
  [0x013b, 'other words'], // Artist
  [0x8769, 'other words'], // Exif information: exposure, serial numbers, the maker's own notes
]);
const ORIENTATION = 0x0112;
/** More entries than any camera writes: a longer list is not one. ASM. */
const MOST_ENTRIES = 500;

/** What a block of Exif tells. */
export interface Exif {
  readonly carries: readonly Carried[];
  readonly isTurned: boolean;
}

/**
 * Reads the first directory of a TIFF block, where Exif keeps what tells of place, device and time.
 *
 * Source: TIFF 6.0 (Adobe 1992), section 2; Exif 2.32 (CIPA DC-008-2019), 4.6.
 * @param block From the byte-order mark ("II" or "MM") on; "Exif" and two zeros may stand before it.
 */
export function readExif(block: Uint8Array): Exif {
  const bytes = letters(block, 0, 6) === 'Exif\0\0' ? block.subarray(6) : block;
  const order = letters(bytes, 0, 2);
  if (order !== 'II' && order !== 'MM') return { carries: ['other words'], isTurned: false };
  const isLittle = order === 'II';
  const { u16, u32 } = numbersOf(bytes);
  const directory = u32(4, isLittle);
  const entries = Math.min(u16(directory, isLittle), MOST_ENTRIES);
  const found = new Set<Carried>();
  let isTurned = false;
  for (let entry = 0; entry < entries; entry += 1) {
    const place = directory + 2 + entry * 12;
    const tag = u16(place, isLittle);
    const carried = TAGS.get(tag);
    if (carried !== undefined) found.add(carried);
    if (tag === ORIENTATION) isTurned = u16(place + 8, isLittle) > 1;
  }
  return { carries: [...found], isTurned };
}
