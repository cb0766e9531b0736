/** The remainder of each byte. */
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1)
    remainder = remainder & 1 ? (remainder >>> 1) ^ 0xed_b8_83_20 : remainder >>> 1;
  return remainder;
});

/**
 * The checksum that a zip keeps of each file.
 *
 * Source: ITU-T V.42 (2002), 8.1.1.6.2: the remainder by x³² + x²⁶ + x²³ + … + 1, here with its lowest bit first.
 *
 * @example crc32(new TextEncoder().encode('123456789')) // 0xcbf43926
 */
export function crc32(bytes: Uint8Array): number {
  let remainder = 0xff_ff_ff_ff;
  for (const byte of bytes) remainder = (remainder >>> 8) ^ (TABLE[(remainder ^ byte) & 0xff] ?? 0);
  return (remainder ^ 0xff_ff_ff_ff) >>> 0;
}
