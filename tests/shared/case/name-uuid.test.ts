import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { nameUuid } from '../../../shared/case/name-uuid.ts';
import { sha1 } from '../../../shared/case/sha-1.ts';

const NAMESPACE = '6ba7b810-9dad-11d1-80b4-00c04fd430c8';

/** The same, by Node's own SHA-1 and UTF-8. */
function byNode(namespace: string, name: string): string {
  const digest = createHash('sha1')
    .update(Buffer.from(namespace.replaceAll('-', ''), 'hex'))
    .update(Buffer.from(name, 'utf8'))
    .digest();
  digest[6] = ((digest[6] ?? 0) & 0x0f) | 0x50;
  digest[8] = ((digest[8] ?? 0) & 0x3f) | 0x80;
  return digest
    .toString('hex')
    .slice(0, 32)
    .replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

test('the example of the doc comments', () => {
  expect(sha1([]).slice(0, 4)).toEqual([0xda, 0x39, 0xa3, 0xee]);
  expect(nameUuid(NAMESPACE, 'www.example.com')).toBe('2ed6657d-e927-568b-95e1-2665a8aea6a2');
});

test('digests are those of another implementation, at every length round a block', () => {
  for (let length = 0; length <= 200; length += 1) {
    const bytes = Array.from({ length }, (_, at) => (at * 37 + length) & 255);
    expect(Buffer.from(sha1(bytes)).toString('hex')).toBe(
      createHash('sha1').update(Buffer.from(bytes)).digest('hex'),
    );
  }
});

test('names of any script, half pairs too, are named as another implementation names them', () => {
  fc.assert(
    fc.property(fc.uuid(), fc.string({ unit: 'binary' }), (namespace, name) => {
      expect(nameUuid(namespace, name)).toBe(byNode(namespace, name));
    }),
  );
  for (const name of ['Māori', '🪨', 'a\uD800b', '\uDC00'])
    expect(nameUuid(NAMESPACE, name)).toBe(byNode(NAMESPACE, name));
});
