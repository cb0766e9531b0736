import { drawGood, type Drawing, type FindToDraw, type StepDrawn } from '../../shared/drawing/index.ts';
import { drawnFind, viewBoxOf, type Cut } from '../components/drawn.ts';
import { drawnStep } from '../components/drawn-step.ts';
import type { Symbol } from '../components/symbols.ts';
import type { Drawn } from '../player/drawn.ts';

/** The drawings of a pack: each is in it once, whoever points to it. */
export interface Drawings {
  /** Puts in drawings that have ids of their own. */
  readonly keep: (symbols: readonly Symbol[]) => void;
  /** A drawing by the id it has in the pack; put in where it is not there yet. */
  readonly drawing: (of: Drawing) => Drawn;
  readonly find: (find: FindToDraw, cut: Cut) => Drawn;
  /** Null where no drawing is named. */
  readonly step: (step: StepDrawn | null) => Drawn | null;
  readonly good: (good: string) => Drawn;
  readonly all: () => readonly Symbol[];
}

/** Begins a pack's drawings, with none. */
export function newDrawings(): Drawings {
  const byId = new Map<string, Symbol>();
  const idOf = new Map<string, string>();
  const key = ({ viewBox, markup }: Omit<Symbol, 'id'>): string => `${viewBox} ${markup}`;
  const keep = (symbols: readonly Symbol[]): void => {
    for (const symbol of symbols) {
      const before = byId.get(symbol.id);
      if (before !== undefined) idOf.delete(key(before));
      byId.set(symbol.id, symbol);
      idOf.set(key(symbol), symbol.id);
    }
  };
  const drawing = (of: Drawing): Drawn => {
    const shown = { viewBox: viewBoxOf(of), markup: of.markup };
    const id = idOf.get(key(shown)) ?? `drawing-${byId.size + 1}`;
    if (!byId.has(id)) keep([{ id, ...shown }]);
    return { id, width: of.viewBox.width, height: of.viewBox.height };
  };
  return {
    keep,
    drawing,
    find: (find, cut) => drawing(drawnFind(find, cut)),
    step: (step) => {
      const drawn = drawnStep(step);
      return drawn === null ? null : drawing(drawn);
    },
    good: (good) => drawing(drawGood(good)),
    // What is drawn alike lies side by side: a compressor looks back 32 kB and no further.
    all: () =>
      [...byId.values()].toSorted((a, b) => (a.markup < b.markup ? -1 : a.markup > b.markup ? 1 : 0)),
  };
}
