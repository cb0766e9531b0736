import type { Hazard } from '../../shared/safety/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { inOrder, type Control } from '../../shared/safety/index.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import type { ControlSaid, HazardSaid, PrintBlock, PrintPart } from '../printing/print-view.ts';

const words = catalogues.en.safetyPapers;

export const text = (said: string, look?: 'quiet' | 'strong' | 'small'): PrintBlock =>
  look === undefined ? { block: 'text', text: said } : { block: 'text', text: said, look };

export const heading = (said: string): PrintBlock => ({ block: 'heading', text: said });

/** Pieces that stand straight on the paper. */
export const straight = (id: string, blocks: readonly PrintBlock[]): PrintPart => ({
  id,
  look: null,
  title: null,
  blocks,
});

/** Pieces under a heading of their own. */
export const section = (
  id: string,
  title: string | null,
  blocks: readonly PrintBlock[],
  look: NonNullable<PrintPart['look']> = 'paper-section',
): PrintPart => ({ id, look, title, blocks });

/** A control with the mark of how it is known. */
export const controlSaid = ({ text: said, status, source }: Control): ControlSaid => ({
  text: said,
  mark: `(${status}: ${source})`,
});

/** A hazard as the safety sheet and the draft tell it: whom, how, what is usually done, who decides. */
export const hazardSaid = (hazard: Hazard): HazardSaid => ({
  name: hazard.name,
  who: say(words.whoWorst, { who: hazard.who.join(', '), worst: hazard.worst }),
  controls: inOrder(hazard.controls).map(controlSaid),
  never: hazard.never.length === 0 ? null : say(words.never, { never: hazard.never.join(' ') }),
  decides: say(words.decides, { who: hazard.deferTo }),
});

/** What comes before everything on a safety paper. */
export const safetyFirst = ({ safety: { caution } }: Library): readonly PrintBlock[] => [
  text(words.first, 'strong'),
  { block: 'caution', strong: caution.neverLine, text: caution.short },
];

/** What the marks mean, and the works that hazards' controls cite. */
export function safetySources({ safety }: Library, hazards: readonly Hazard[]): readonly PrintBlock[] {
  const cited = new Set(hazards.flatMap(({ controls }) => controls.map(({ source }) => source)));
  return [
    text(words.marks),
    {
      block: 'marked',
      items: safety.sources
        .filter(({ id }) => cited.has(id))
        .map(({ id, citation, status, via }) => ({
          strong: id,
          text: `(${status}): ${citation} ${via ?? ''}`.trimEnd(),
        })),
    },
  ];
}
