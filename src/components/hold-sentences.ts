import type { HandlePiece } from '../../shared/activities/scorers.ts';
import { catalogues, say } from '../../shared/words/index.ts';

/** How a piece is held: one sentence for all, or each with the ages that it is for. */
export const holdSentences = (hold: HandlePiece['hold']): readonly string[] =>
  hold.length === 1
    ? hold.map(({ words }) => words)
    : hold.map(({ bands, words }) =>
        say(catalogues.en.handlePapers.forBands, { bands: bands.join(', ').replaceAll('-', '–'), words }),
      );
