import { readCodePage437 } from './code-page-437.ts';
import { readUtf8 } from './utf-8.ts';

/** A file as the list at a zip's end tells of it; nothing of it has been unpacked. */
export interface Listed {
  readonly path: string;
  /** Bytes as it lies in the zip, where its packed bytes begin and how many they are. */
  readonly from: number;
  readonly packedSize: number;
  /** Bytes when unpacked, as the list says: it may not be true. */
  readonly size: number;
  readonly crc: number;
  /** 0 lies as it is, 8 is deflated; others are not read. */
  readonly method: number;
  /** A password is needed. */
  readonly isLocked: boolean;
}

const END = 0x06_05_4b_50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xff_ff;
const ENTRY = 0x02_01_4b_50;
const ENTRY_LENGTH = 46;
const LOCAL = 0x04_03_4b_50;
const LOCAL_LENGTH = 30;
const IS_LOCKED = 1;

/** Where the end record begins: the last place that has its mark and the comment that it tells of; -1 where there is none. */
function placeOfEnd(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let place = last; place >= Math.max(0, last - LONGEST_COMMENT); place -= 1)
    if (view.getUint32(place, true) === END && place + view.getUint16(place + 20, true) <= last) return place;
  return -1;
}

/** Some systems write UTF-8 and do not say so: what can be read as that is that. */
const nameOf = (bytes: Uint8Array): string => readUtf8(bytes) ?? readCodePage437(bytes);

/**
 * The list of files at a zip's end; null where it does not hold together. Zips of more than 65,535 files or four gigabytes
 * (Zip64) count as that too.
 *
 * Source: PKWARE APPNOTE 6.3.10, 4.3.7, 4.3.12 and 4.3.16.
 */
export function readList(bytes: Uint8Array): readonly Listed[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = placeOfEnd(view);
  if (end < 0) return null;
  const count = view.getUint16(end + 10, true);
  let place = view.getUint32(end + 16, true);
  const listed: Listed[] = [];
  for (let number = 0; number < count; number += 1) {
    if (place + ENTRY_LENGTH > end || view.getUint32(place, true) !== ENTRY) return null;
    const flags = view.getUint16(place + 8, true);
    const packedSize = view.getUint32(place + 20, true);
    const nameLength = view.getUint16(place + 28, true);
    const local = view.getUint32(place + 42, true);
    const next =
      place + ENTRY_LENGTH + nameLength + view.getUint16(place + 30, true) + view.getUint16(place + 32, true);
    if (next > end || local + LOCAL_LENGTH > end || view.getUint32(local, true) !== LOCAL) return null;
    const from = local + LOCAL_LENGTH + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (from + packedSize > end) return null;
    const name = bytes.subarray(place + ENTRY_LENGTH, place + ENTRY_LENGTH + nameLength);
    listed.push({
      path: nameOf(name),
      from,
      packedSize,
      size: view.getUint32(place + 24, true),
      crc: view.getUint32(place + 16, true),
      method: view.getUint16(place + 10, true),
      isLocked: (flags & IS_LOCKED) !== 0,
    });
    place = next;
  }
  return listed;
}
