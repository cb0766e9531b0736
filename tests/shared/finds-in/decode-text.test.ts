import { assert, property, string, uint8Array } from 'fast-check';
import { expect, test } from 'vitest';
import { decodeText } from '../../../shared/finds-in/index.ts';

test('text in UTF-8 reads as it was', () => {
  assert(
    property(string({ unit: 'binary', maxLength: 200 }), (text) => {
      const sound = text.toWellFormed();
      if (/^\uFEFF|^\uFFFE/.test(sound)) return;
      expect(decodeText(Buffer.from(sound, 'utf8'))).toEqual({ text: sound, encoding: 'utf-8' });
    }),
    { seed: 20261129, numRuns: 500 },
  );
});

test('text in UTF-16 with its mark reads as it was', () => {
  expect(decodeText(Buffer.from('\uFEFFLänge 🦴', 'utf16le'))).toEqual({
    text: 'Länge 🦴',
    encoding: 'utf-16le',
  });
});

test('any bytes that are no UTF-8 read as the platform’s own reader of Windows-1252 reads them', () => {
  const reader = new TextDecoder('windows-1252');
  assert(
    property(uint8Array({ minLength: 1, maxLength: 60 }), (bytes) => {
      const { text, encoding } = decodeText(bytes);
      if (encoding === 'windows-1252') expect(text).toBe(reader.decode(bytes));
      if (encoding === 'utf-8')
        expect(text).toBe(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes));
    }),
    { seed: 20261129, numRuns: 2000 },
  );
});
