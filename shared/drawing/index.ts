export { describeFind, type Description } from './describe-find.ts';
export { drawFind, type DrawFindOptions } from './draw-find.ts';
export { drawGood } from './draw-good.ts';
export { INKS, type Ink } from './mark.ts';
export { drawPhoto } from './draw-photo.ts';
export { drawPitPlan } from './draw-pit-plan.ts';
export { drawPitSection } from './draw-pit-section.ts';
export { drawStep, STEPS_DRAWN, type StepDrawn } from './draw-step.ts';
export type {
  Drawing,
  FillToDraw,
  FindToDraw,
  Photo,
  PitPlan,
  PitToCut,
  PitToDraw,
  PlanPlace,
} from './drawing.ts';
export { TYPES_DRAWN } from './drawers.ts';
export { writeSvg } from './write-svg.ts';
