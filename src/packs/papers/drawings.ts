import { drawGood, type Drawing, type FindToDraw, type StepDrawn } from '../../../shared/drawing/index.ts';
import { drawnFind, viewBoxOf, type Cut } from '../../components/drawn.ts';
import { drawnStep } from '../../components/drawn-step.ts';
import type { Symbol } from '../../components/symbols.ts';
import type { Drawn } from '../../player/papers/paper-view.ts';

/** The drawings of a pack: each is in it once, whoever points to it. */
export interface Drawings {
  /** A drawing by the id it has in the pack, put in where it is not there yet. */
  readonly drawing: (of: Drawing) => Drawn;
  readonly find: (find: FindToDraw, cut: Cut) => Drawn;
  /** Null where no drawing is named. */
  readonly step: (step: StepDrawn | null) => Drawn | null;
  readonly good: (good: string) => Drawn;
  /** Those the papers brought. */
  readonly added: () => readonly Symbol[];
}

/** Points papers to the drawings that are there already, and keeps what they bring of their own. */
export function drawingsBeside(there: readonly Symbol[]): Drawings {
  const key = ({ viewBox, markup }: Pick<Symbol, 'viewBox' | 'markup'>): string => `${viewBox} ${markup}`;
  const ids = new Map(there.map((symbol) => [key(symbol), symbol.id]));
  const added: Symbol[] = [];
  const drawing = (of: Drawing): Drawn => {
    const shown = { viewBox: viewBoxOf(of), markup: of.markup };
    let id = ids.get(key(shown));
    if (id === undefined) {
      id = `paper-drawing-${added.length + 1}`;
      added.push({ id, ...shown });
      ids.set(key(shown), id);
    }
    return { id, width: of.viewBox.width, height: of.viewBox.height };
  };
  return {
    drawing,
    find: (find, cut) => drawing(drawnFind(find, cut)),
    step: (step) => {
      const drawn = drawnStep(step);
      return drawn === null ? null : drawing(drawn);
    },
    good: (good) => drawing(drawGood(good)),
    added: () => added,
  };
}
