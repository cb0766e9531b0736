import { writeUtf8 } from '../zip/index.ts';

/** Names that Windows keeps for devices, whatever their ending. FM. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;
/** File systems hold 255 bytes; the ending and what tells two apart go there too. */
const MOST_BYTES = 200;

/**
 * The name of a visit as every file system keeps it; a name of the Bench's own making stays as it is.
 *
 * @example safeName('pit 3/4?') // 'pit 3-4-'
 */
export function safeName(name: string): string {
  // Control signs are exactly what is looked for.
  // oxlint-disable-next-line no-control-regex
  const plain = name.replaceAll(/[\u0000-\u001f\u007f<>:"/\\|?*]/g, '-').replace(/^[. ]+|[. ]+$/g, '');
  const told = RESERVED.test(plain) ? `visit-${plain}` : plain;
  const signs = Array.from(told === '' ? 'lesson' : told);
  while (writeUtf8(signs.join('')).length > MOST_BYTES) signs.pop();
  return signs.join('').replace(/[. ]+$/, '');
}
