import type { PaperSize } from '../printing/print-view.ts';

/** Where letter paper is usual: CLDR's table of paper sizes, from memory (FM). */
const LETTER = /-(?:BZ|CA|CL|CO|CR|GT|MX|NI|PA|PH|PR|SV|US|VE)\b/;

/** The size of paper that is usual where a language is spoken so. @example usualSize('en-US') // 'Letter' */
export const usualSize = (language: string): PaperSize => (LETTER.test(language) ? 'Letter' : 'A4');
