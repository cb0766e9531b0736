export { drawFind, type DrawFindOptions } from './draw-find.ts';
export { drawGood } from './draw-good.ts';
export { drawPitPlan } from './draw-pit-plan.ts';
export type { Drawing, FillToDraw, FindToDraw, PitPlan, PitToCut, PitToDraw, PlanPlace } from './drawing.ts';
