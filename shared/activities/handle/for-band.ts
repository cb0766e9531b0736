import type { Band } from '../../library/bands.ts';
import type { HandleActivity, SaidLine } from './activity.ts';

/** A session as one band meets it: held, and asked about, in that band's words. */
export function handleForBand(activity: HandleActivity, band: Band): HandleActivity {
  const own = (lines: readonly SaidLine[]): readonly SaidLine[] =>
    lines.filter(({ bands }) => bands.includes(band)).map((line) => ({ ...line, bands: [band] }));
  return {
    ...activity,
    pieces: activity.pieces.map((piece) => ({
      ...piece,
      hold: own(piece.hold),
      prompts: piece.prompts.map((prompt) => ({ ...prompt, says: own(prompt.says) })),
    })),
  };
}
