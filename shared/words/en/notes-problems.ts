import { quoted } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for problems in the glossary. */
export const glossaryWords = {
  shapeTwice: (shape: string, owner: string): Sentences => ({
    expected: 'each shape of a word in one row only',
    received: `${quoted(shape)}, which the row ${quoted(owner)} has already`,
    mend: 'remove it from one of the two rows',
  }),
};

/** Sentences for problems in what teacher notes are made from. */
export const notesWords = {
  idTwice: (id: string): Sentences => ({
    expected: 'each id once in the whole file',
    received: `${quoted(id)} a second time`,
    mend: 'give one of the two rows another id',
  }),
};
