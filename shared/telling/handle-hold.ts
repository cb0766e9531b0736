import type { HandlePiece } from '../activities/scorers.ts';
import { catalogues, say } from '../words/index.ts';

/**
 * How a piece is held, for a helper: the usual words as the oldest read them, and the lead's own; each with the ages
 * that it is for where there is more than one.
 */
export function holdSentences(hold: HandlePiece['hold']): readonly string[] {
  const usual = hold.filter(({ by }) => by === 'practice');
  const last = usual.at(-1);
  const lines = [
    ...(last === undefined ? [] : [{ bands: usual.flatMap(({ bands }) => bands), words: last.words }]),
    ...hold.filter(({ by }) => by === 'lead'),
  ];
  const [only] = lines;
  if (only !== undefined && lines.length === 1) return [only.words];
  return lines.map(({ bands, words }) =>
    say(catalogues.en.handlePapers.forBands, { bands: bands.join(', ').replaceAll('-', '–'), words }),
  );
}
