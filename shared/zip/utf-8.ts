import { strFromU8, strToU8 } from 'fflate';

/** A text as bytes in UTF-8. */
export const writeUtf8 = (text: string): Uint8Array => strToU8(text);

/**
 * The text of bytes in UTF-8, without a byte-order mark; null where they are no such text, or hold a sign of nought.
 *
 * @example readUtf8(new Uint8Array([0xe4])) // null: an ä of an older code
 */
export function readUtf8(bytes: Uint8Array): string | null {
  if (bytes.includes(0)) return null;
  const hasMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const plain = hasMark ? bytes.subarray(3) : bytes;
  const text = strFromU8(plain);
  // What cannot be read is read as a sign of its own, and would be written as that.
  const again = strToU8(text);
  return again.length === plain.length && again.every((byte, index) => byte === plain[index]) ? text : null;
}
