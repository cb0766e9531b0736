/** Code points of Windows-1252 from 0x80 to 0x9F, the only ones that differ from Latin-1. Source: WHATWG Encoding Standard, index windows-1252. */
const FROM_80 =
  '\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178';

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** Joins code units or points in pieces that fit an argument list. */
function textFrom(codes: readonly number[]): string {
  let text = '';
  for (let at = 0; at < codes.length; at += 4096) text += String.fromCodePoint(...codes.slice(at, at + 4096));
  return text;
}

/** The code points of UTF-8, or null where the bytes are none. Source: RFC 3629, sections 3 and 4. */
function utf8(bytes: Uint8Array): readonly number[] | null {
  const codes: number[] = [];
  for (let at = 0; at < bytes.length;) {
    const first = bytes[at] ?? 0;
    const more =
      first < 0x80
        ? 0
        : first >= 0xc2 && first < 0xe0
          ? 1
          : first >= 0xe0 && first < 0xf0
            ? 2
            : first >= 0xf0 && first < 0xf5
              ? 3
              : -1;
    if (more === -1) return null;
    let code = more === 0 ? first : first & (0x3f >> more);
    for (let next = 1; next <= more; next += 1) {
      const byte = bytes[at + next];
      if (byte === undefined || (byte & 0xc0) !== 0x80) return null;
      code = (code << 6) | (byte & 0x3f);
    }
    const least = [0, 0x80, 0x800, 0x1_0000][more] ?? 0;
    if (code < least || code > 0x10_ffff || (code >= 0xd800 && code < 0xe000)) return null;
    codes.push(code);
    at += more + 1;
  }
  return codes;
}

/**
 * The text of a file as spreadsheets save it: UTF-16 where its mark says so, UTF-8 where the bytes are that, else the
 * Windows code page of western Europe, which any bytes are.
 *
 * @example decodeText(new Uint8Array([0x4c, 0xe4, 0x6e, 0x67, 0x65])).text // 'Länge'
 */
export function decodeText(bytes: Uint8Array): { readonly text: string; readonly encoding: Encoding } {
  const isLittle = bytes[0] === 0xff && bytes[1] === 0xfe;
  if (isLittle || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    const codes: number[] = [];
    for (let at = 2; at + 1 < bytes.length; at += 2) {
      const [one, two] = [bytes[at] ?? 0, bytes[at + 1] ?? 0];
      codes.push(isLittle ? one | (two << 8) : (one << 8) | two);
    }
    return { text: textFrom(codes), encoding: isLittle ? 'utf-16le' : 'utf-16be' };
  }
  const codes = utf8(bytes);
  if (codes !== null) return { text: textFrom(codes), encoding: 'utf-8' };
  const own = [...bytes].map((byte) =>
    byte >= 0x80 && byte < 0xa0 ? (FROM_80.codePointAt(byte - 0x80) ?? byte) : byte,
  );
  return { text: textFrom(own), encoding: 'windows-1252' };
}
