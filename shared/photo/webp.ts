import { readExif } from './exif.ts';
import { join, letters, numbersOf, type Carried, type Picture } from './picture.ts';

const KEPT: ReadonlySet<string> = new Set(['VP8X', 'VP8 ', 'VP8L', 'ALPH', 'ICCP']);
/** In the first byte of VP8X: colour profile and transparency; the other flags say that Exif, words or a film follow. */
const KEPT_FLAGS = 0b0011_0000;

/** A whole number of three bytes, smallest first. */
const u24 = (bytes: Uint8Array, place: number): number =>
  (bytes[place] ?? 0) + (bytes[place + 1] ?? 0) * 0x100 + (bytes[place + 2] ?? 0) * 0x1_0000;

/** The sides a chunk tells: 14 bits each; null where it tells none. */
function sidesOf(name: string, bytes: Uint8Array, from: number): readonly [number, number] | null {
  const { u16 } = numbersOf(bytes);
  if (name === 'VP8X') return [u24(bytes, from + 4) + 1, u24(bytes, from + 7) + 1];
  if (name === 'VP8 ') return [u16(from + 6, true) & 0x3fff, u16(from + 8, true) & 0x3fff];
  if (name !== 'VP8L') return null;
  const packed = u16(from + 1, true) + u16(from + 3, true) * 0x1_0000;
  return [(packed & 0x3fff) + 1, (Math.floor(packed / 0x4000) & 0x3fff) + 1];
}

/**
 * Reads a WebP's chunks; null where they do not hold together or it is a film.
 *
 * Source: IETF RFC 9649 (2024), WebP Image Format.
 */
export function readWebp(bytes: Uint8Array): Picture | null {
  const { u32 } = numbersOf(bytes);
  const kept: Uint8Array[] = [];
  const carries = new Set<Carried>();
  let isTurned = false;
  let sides: readonly [number, number] | null = null;
  const end = Math.min(bytes.length, 8 + u32(4, true));
  if (end < bytes.length) carries.add('other words');
  for (let place = 12; place + 8 <= end;) {
    const name = letters(bytes, place, 4);
    const length = u32(place + 4, true);
    const next = place + 8 + length + (length % 2);
    if (next > end || name === 'ANIM' || name === 'ANMF') return null;
    sides ??= sidesOf(name, bytes, place + 8);
    if (KEPT.has(name)) {
      const chunk = bytes.slice(place, next);
      if (name === 'VP8X') chunk[8] = (chunk[8] ?? 0) & KEPT_FLAGS;
      kept.push(chunk);
    } else if (name === 'EXIF') {
      const exif = readExif(bytes.subarray(place + 8, next));
      for (const carried of exif.carries) carries.add(carried);
      isTurned ||= exif.isTurned;
    } else carries.add('other words');
    place = next;
  }
  if (sides === null) return null;
  const inside = join(kept);
  const head = bytes.slice(0, 12);
  new DataView(head.buffer).setUint32(4, inside.length + 4, true);
  const [widthPx, heightPx] = sides;
  return {
    type: 'image/webp',
    widthPx,
    heightPx,
    isTurned,
    carries: [...carries],
    stripped: join([head, inside]),
  };
}
