import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { readUtf8 } from '../../../shared/zip/index.ts';

const strict = (bytes: Uint8Array): string | null => {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.includes('\0') ? null : text;
  } catch {
    return null;
  }
};

test('any bytes are read, or refused, as a strict reader does', () => {
  const texts = fc.string({ unit: 'binary' }).map((text) => new TextEncoder().encode(text));
  const spoilt = fc.tuple(texts, fc.nat(), fc.nat(255)).map(([bytes, at, byte]) => {
    const other = bytes.slice();
    if (other.length > 0) other[at % other.length] = byte;
    return other;
  });
  fc.assert(
    fc.property(fc.oneof(texts, spoilt, fc.uint8Array()), (bytes) => {
      expect(readUtf8(bytes)).toBe(strict(bytes));
    }),
    { numRuns: 800 },
  );
});
