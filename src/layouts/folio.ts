import { createHash } from 'node:crypto';

/** Any text as a CSS string: nothing in it can end the string or the style element. */
const cssString = (text: string): string =>
  `"${text.replace(/[\\"<>\n\r\f]/g, (character) => `\\${character.codePointAt(0)?.toString(16) ?? ''} `)}"`;

/** The running foot of a paper as a style, with the hash by which the page's policy lets it through. */
export function folioStyle(
  lesson: string,
  part: string,
): { readonly css: string; readonly hash: `sha256-${string}` } {
  const css = `:root{--folio:${cssString(`${lesson} · ${part}`)}}`;
  return { css, hash: `sha256-${createHash('sha256').update(css).digest('base64')}` };
}
