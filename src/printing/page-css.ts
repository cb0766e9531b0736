import type { PaperSize } from './print-view.ts';

/** Papers that lie on their side, as their pages in the style sheets do: whoever says a size says it for these too. */
export const SIDEWAYS = ['risk-assessment', 'signs', 'table-poster'] as const;

/** The size of paper as style, for all papers. @example pageCss('A4').startsWith('@page{size:A4}') // true */
export const pageCss = (size: PaperSize): string =>
  `@page{size:${size}}${SIDEWAYS.map((path) => `@page ${path}{size:${size} landscape}`).join('')}`;
