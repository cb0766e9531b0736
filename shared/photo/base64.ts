const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/**
 * Bytes as base64 text. Written out because the engine knows neither `btoa` nor `Buffer`. Source: IETF RFC 4648, section 4.
 *
 * @example base64(new Uint8Array([102, 111, 111, 98])) // 'Zm9vYg=='
 */
export function base64(bytes: Uint8Array): string {
  let text = '';
  for (let place = 0; place < bytes.length; place += 3) {
    const left = bytes.length - place;
    const word = ((bytes[place] ?? 0) << 16) | ((bytes[place + 1] ?? 0) << 8) | (bytes[place + 2] ?? 0);
    const four = [18, 12, 6, 0].map((shift) => LETTERS[(word >> shift) & 63] ?? '').join('');
    text += left >= 3 ? four : four.slice(0, left + 1).padEnd(4, '=');
  }
  return text;
}
