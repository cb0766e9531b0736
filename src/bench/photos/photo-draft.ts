import type { LengthBar } from '../../../shared/photo/index.ts';

/** What a lead has said of a picture so far; null where nothing has been touched, and what is usual is offered. */
export interface PhotoDraft {
  readonly site: string | null;
  readonly find: string;
  readonly shows: string;
  readonly credit: string | null;
  /** Null where no scale bar is wanted. */
  readonly bar: LengthBar | null;
}

/** A draft with all that is needed. */
export interface PhotoSaid {
  readonly site: string;
  readonly find: string;
  readonly shows: string;
  readonly credit: string;
  readonly bar: LengthBar | null;
}

/** What of a photograph is still missing, in the order of its form. */
export const missingIn = ({ find, shows, credit }: PhotoSaid): readonly ('find' | 'shows' | 'credit')[] =>
  (['find', 'shows', 'credit'] as const).filter((key) => ({ find, shows, credit })[key].trim() === '');

/**
 * The word for a find's kind where the words of a picture give it away; null where they do not.
 *
 * @example tellsWhat('A grey arrowhead', 'arrowhead') // 'arrowhead'
 */
export function tellsWhat(shows: string, typeName: string): string | null {
  const plain = (text: string): string => ` ${text.toLowerCase().replaceAll(/[^\p{L}]+/gu, ' ')} `;
  const word = plain(typeName).trim();
  const said = plain(shows);
  return word !== '' && (said.includes(` ${word} `) || said.includes(` ${word}s `)) ? word : null;
}
