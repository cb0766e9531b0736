import { sha1 } from './sha-1.ts';

const REPLACEMENT = 0xfffd;

/** The bytes of a text in UTF-8; half a pair stands as the replacement character. */
function utf8(text: string): readonly number[] {
  return Array.from(text).flatMap((character) => {
    const written = character.codePointAt(0) ?? 0;
    const point = written >= 0xd800 && written <= 0xdfff ? REPLACEMENT : written;
    const tail = (shift: number): number => 128 | ((point >> shift) & 63);
    if (point < 0x80) return [point];
    if (point < 0x800) return [192 | (point >> 6), tail(0)];
    if (point < 0x1_0000) return [224 | (point >> 12), tail(6), tail(0)];
    return [240 | (point >> 18), tail(12), tail(6), tail(0)];
  });
}

const bytesOf = (uuid: string): readonly number[] =>
  (uuid.replaceAll('-', '').match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16));

/**
 * A UUID of version 5: always the same for the same name within the same namespace (RFC 9562, section 5.5, FM).
 *
 * @param namespace A UUID.
 * @example nameUuid('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com') // '2ed6657d-e927-568b-95e1-2665a8aea6a2'
 */
export function nameUuid(namespace: string, name: string): string {
  const bytes = sha1([...bytesOf(namespace), ...utf8(name)]).slice(0, 16);
  const marked = bytes.map((byte, at) => {
    if (at === 6) return (byte & 15) | 0x50;
    return at === 8 ? (byte & 63) | 128 : byte;
  });
  const digits = marked.map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [
    digits.slice(0, 8),
    digits.slice(8, 12),
    digits.slice(12, 16),
    digits.slice(16, 20),
    digits.slice(20),
  ].join('-');
}
