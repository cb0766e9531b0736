/** The signs of the upper half of IBM's code page 437, in which a zip writes names that it does not mark as UTF-8. */
const UPPER =
  'ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜ¢£¥₧ƒáíóúñÑªº¿⌐¬½¼¡«»░▒▓│┤╡╢╖╕╣║╗╝╜╛┐└┴┬├─┼╞╟╚╔╩╦╠═╬╧╨╤╥╙╘╒╓╫╪┘┌█▄▌▐▀αßΓπΣσµτΦΘΩδ∞φε∩≡±≥≤⌠⌡÷≈°∙·√ⁿ²■\u00a0';

/**
 * A name in code page 437.
 *
 * Source: PKWARE APPNOTE 6.3.10, appendix D.1; the table is Unicode's CP437.TXT.
 *
 * @example readCodePage437(new Uint8Array([0x84])) // 'ä'
 */
export const readCodePage437 = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => (byte < 0x80 ? String.fromCharCode(byte) : (UPPER[byte - 0x80] ?? ''))).join('');
