import { crc32 as nodeCrc32 } from 'node:zlib';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { crc32 } from '../../../shared/zip/crc-32.ts';

// The check value of CRC-32/ISO-HDLC in Greg Cook's catalogue of parametrised CRC algorithms.
test('the digits 1 to 9 come to the published check value', () => {
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcb_f4_39_26);
  expect(crc32(new Uint8Array())).toBe(0);
});

test('any bytes come to what zlib makes of them', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 500 }), (bytes) => crc32(bytes) === nodeCrc32(bytes)),
    { numRuns: 300 },
  );
});
