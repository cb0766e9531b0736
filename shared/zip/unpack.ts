import { Inflate } from 'fflate';
import { crc32 } from './crc-32.ts';
import type { Listed } from './read-list.ts';

/** Unpacked so many packed bytes at a time: at most a thousand times as many are made before they are counted. */
const CHUNK_BYTES = 16_384;

/** Why one file of a zip is not unpacked: a password, a way of packing we do not know, other bytes than the checksum says, more than the list says. */
export type Unfit = 'locked' | 'packed-otherwise' | 'damaged' | 'larger-than-told';

class LargerThanTold extends Error {}

function inflate(packed: Uint8Array, size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let length = 0;
  const stream = new Inflate((piece) => {
    if (length + piece.length > size) throw new LargerThanTold();
    whole.set(piece, length);
    length += piece.length;
  });
  for (let from = 0; from < packed.length; from += CHUNK_BYTES)
    stream.push(packed.subarray(from, from + CHUNK_BYTES), from + CHUNK_BYTES >= packed.length);
  return whole.subarray(0, length);
}

/** One file of a zip, unpacked: room is made for no more bytes than the list tells of. */
export function unpack(
  zip: Uint8Array,
  { from, packedSize, size, crc, method, isLocked }: Listed,
): Uint8Array | Unfit {
  if (isLocked) return 'locked';
  if (method !== 0 && method !== 8) return 'packed-otherwise';
  const packed = zip.subarray(from, from + packedSize);
  if (method === 0) return packedSize === size && crc32(packed) === crc ? packed.slice() : 'damaged';
  try {
    const bytes = inflate(packed, size);
    return bytes.length === size && crc32(bytes) === crc ? bytes : 'damaged';
  } catch (error) {
    return error instanceof LargerThanTold ? 'larger-than-told' : 'damaged';
  }
}
