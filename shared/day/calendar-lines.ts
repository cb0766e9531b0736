/** Bytes of a character in UTF-8. */
const bytesOf = (character: string): number => {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x1_0000 ? 3 : 4;
};

const MOST_BYTES = 75;

/**
 * A line of a calendar file, folded so that none is over 75 bytes and no character is cut. Source: RFC 5545, 3.1.
 *
 * @example foldLine('SUMMARY:Pots') // 'SUMMARY:Pots'
 */
export function foldLine(line: string): string {
  let bytes = 0;
  let folded = '';
  for (const character of line) {
    const more = bytesOf(character);
    if (bytes + more > MOST_BYTES) {
      folded += '\r\n ';
      bytes = 1;
    }
    folded += character;
    bytes += more;
  }
  return folded;
}

/**
 * Text as a calendar file holds it; characters that steer a machine are left out. Source: RFC 5545, 3.3.11.
 *
 * @example calendarText('Pots; tent, left') // 'Pots\\; tent\\, left'
 */
export const calendarText = (text: string): string =>
  text
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/\p{Cc}/gu, '');
