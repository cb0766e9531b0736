import type { KnownBy } from '../curriculum/index.ts';
import type { Band } from '../library/bands.ts';

/** A word of the trade, with what counts as using it and what it means, in our own sentences. */
export interface GlossaryWord {
  readonly word: string;
  /** Other shapes of it that count as using it. */
  readonly forms: readonly string[];
  /** Shapes, the word itself among them, that count only where they are a whole name: a tray called "ground". */
  readonly alone: readonly string[];
  readonly younger: string;
  readonly older: string;
  readonly status: KnownBy;
  /** The id of a source. */
  readonly source: string;
}

const YOUNGER: readonly Band[] = ['4-5', '5-7', '7-9'];

/** True for a band that is told a word in the shorter way. */
export const isYounger = (band: Band): boolean => YOUNGER.includes(band);

/** What a word means, as one band is told it. @example define(flint, '5-7') // 'A hard, smooth stone. …' */
export const define = ({ younger, older }: Pick<GlossaryWord, 'younger' | 'older'>, band: Band): string =>
  isYounger(band) ? younger : older;
