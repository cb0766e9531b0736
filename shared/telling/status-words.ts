import type { Status } from '../library/index.ts';
import { catalogues } from '../words/index.ts';

const words = catalogues.en.site;

const names: Readonly<Record<Status, string>> = {
  RF: words.statusRF,
  FM: words.statusFM,
  DER: words.statusDER,
  ASM: words.statusASM,
  CP: words.statusCP,
  invented: words.statusinvented,
};

/** How a value is known, in words. @example statusWords('FM') // 'from memory' */
export const statusWords = (status: Status): string => names[status];
