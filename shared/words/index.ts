import { agesOf } from './en/ages.ts';
import { compare } from './en/compare.ts';
import { drawings } from './en/drawings.ts';
import { help, problemMeanings } from './en/help.ts';
import { order } from './en/order.ts';
import { site } from './en/site.ts';
import { sort } from './en/sort.ts';

export type { Entry, Template, Words } from './entry.ts';
export { say } from './say.ts';
export { wordsFor } from './words-for.ts';

/** Every language there is; a second one is a folder like `en` and a line here. */
export const catalogues = {
  en: { agesOf, compare, drawings, help, problemMeanings, order, site, sort },
} as const;
