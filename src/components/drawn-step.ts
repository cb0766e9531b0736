import { drawStep, type Drawing, type StepDrawn } from '../../shared/drawing/index.ts';

const kept = new Map<StepDrawn, Drawing>();

/** The drawing of a step's card, drawn once a build; null where none is named, and the card has its words alone. */
export function drawnStep(step: StepDrawn | null): Drawing | null {
  if (step === null) return null;
  const drawn = kept.get(step) ?? drawStep(step);
  kept.set(step, drawn);
  return drawn;
}
