import type { Band } from '../../library/bands.ts';
import type { Find } from '../../library/library.ts';
import { handlePrompts, type LookFor } from '../../words/en/handle-prompts.ts';
import { say, wordsFor } from '../../words/index.ts';
import { SENSES, type HandlePiece, type Prompt, type SaidLine, type Sense } from './activity.ts';
import type { WrittenPiece } from './schema.ts';

type Met = Pick<HandlePiece, 'is' | 'edge' | 'exposure'>;

/** What two hands are for: longer than this (mm) or heavier than this (g). ASM: our judgement. */
const LONG_MM = 150;
const HEAVY_G = 300;
/** Stuff that breaks or crumbles, as it comes out of the ground (common practice). */
const FRAGILE = ['pottery', 'bone', 'antler', 'chalk', 'charcoal', 'charred-shell', 'plant-fibre'];

/** How a piece is held, by what it is and how near a child comes: common practice. */
function usualHold(find: Find, { is, edge, exposure }: Met, band: Band): string {
  const words = wordsFor(handlePrompts.hold, band);
  if (exposure === 'look') return say(words.look);
  if (exposure === 'touch-held') return say(words.touchHeld);
  if (edge !== 'E0') return say(words.sharp);
  const isOriginal = is === 'original';
  if (isOriginal && FRAGILE.includes(find.attributes.material)) return say(words.fragile);
  const isHeavy = isOriginal && (find.massG ?? 0) > HEAVY_G;
  return say(isHeavy || find.lengthMm > LONG_MM ? words.large : words.plain);
}

/** A sentence for each band, said once for bands that read the same; [] where there is nothing to say. */
const linesOf = (
  bands: readonly Band[],
  own: (band: Band) => string | undefined,
  usual: (band: Band) => string | null,
): readonly SaidLine[] =>
  bands.reduce<readonly SaidLine[]>((lines, band) => {
    const written = own(band);
    const words = written ?? usual(band);
    if (words === null) return lines;
    const by = written === undefined ? 'practice' : 'lead';
    const before = lines.find((line) => line.words === words && line.by === by);
    return before === undefined
      ? [...lines, { bands: [band], words, by }]
      : lines.map((line) => (line === before ? { ...line, bands: [...line.bands, band] } : line));
  }, []);

/** How a piece is held. */
export const holdLines = (
  find: Find,
  met: Met,
  written: WrittenPiece['hold'],
  bands: readonly Band[],
): readonly SaidLine[] =>
  linesOf(
    bands,
    (band) => (typeof written === 'string' ? written : written?.[band]),
    (band) => usualHold(find, met, band),
  );

/** What can honestly be asked of one sense; null where nothing can: a cast has neither the feel nor the sound of stone. */
function usualPrompt(sense: Sense, find: Find, { is, edge, exposure }: Met, band: Band): string | null {
  const isCast = is === 'blunt-replica';
  const { material, 'made-by': madeBy } = find.attributes;
  const [look, feel, listen] = [
    wordsFor(handlePrompts.look, band),
    wordsFor(handlePrompts.feel, band),
    wordsFor(handlePrompts.listen, band),
  ];
  switch (sense) {
    case 'look':
      // The names of the sentences are values of the attribute.
      return say(isCast ? look.copy : (look[madeBy as LookFor] ?? look.natural));
    case 'feel':
      if (exposure === 'look') return null;
      if (exposure === 'touch-held') return say(feel.touchHeld);
      if (edge !== 'E0') return say(feel.sharp);
      if (isCast) return say(feel.copy);
      return say(feel[material as keyof typeof feel] ?? feel.usual);
    case 'listen': {
      if (exposure !== 'handle' || edge !== 'E0' || isCast) return null;
      const words = listen[material as keyof typeof listen];
      return words === undefined ? null : say(words);
    }
    default:
      return sense satisfies never;
  }
}

/** What to look, feel and listen for: the lead's words, else the usual ones, else nothing. */
export const promptsFor = (
  find: Find,
  met: Met,
  written: Pick<WrittenPiece, Sense>,
  bands: readonly Band[],
): readonly Prompt[] =>
  SENSES.map((sense) => ({
    sense,
    says: linesOf(
      bands,
      () => written[sense],
      (band) => usualPrompt(sense, find, met, band),
    ),
  })).filter(({ says }) => says.length > 0);
