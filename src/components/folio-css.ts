import { catalogues } from '../../shared/words/index.ts';

/** Any text as a CSS string: nothing in it can end the string or the style element. */
const cssString = (text: string): string =>
  `"${text.replace(/[\\"<>\n\r\f]/g, (character) => `\\${character.codePointAt(0)?.toString(16) ?? ''} `)}"`;

/** A part of a document with pages of its own. */
export interface FolioPart {
  readonly path: string;
  readonly name: string;
  /** How many sheets it takes, where somebody has counted. */
  readonly sheets?: number;
}

/**
 * The running feet of a document: lesson and part on the left; on the right, by `paper.css`, the page of the whole. Where
 * there are several parts each counts its own sheets too. A browser counts them (Chromium from 131); the total of a part is
 * known only to who printed it once already.
 *
 * @example folioCss('Two pits', [{ path: 'cards', name: 'Cards' }])
 */
export function folioCss(lesson: string, parts: readonly FolioPart[]): string {
  const { sheet, of } = catalogues.en.printPack;
  return parts
    .map(({ path, name, sheets }) => {
      const text = cssString(`${lesson} · ${name}${parts.length > 1 ? ` · ${sheet} ` : ''}`);
      const total = sheets === undefined ? '' : ` ${cssString(` ${of} ${sheets}`)}`;
      const counted = parts.length > 1 ? `${text} counter(${path})${total}` : text;
      const counts = parts.length > 1 ? `counter-increment:${path} page;` : '';
      return `@page ${path}{${counts}@bottom-left{content:${counted}}}[data-part="${path}"]{page:${path}}`;
    })
    .join('');
}
