export { drawFind, type DrawFindOptions } from './draw-find.ts';
export { drawPitPlan } from './draw-pit-plan.ts';
export type { Drawing, FindToDraw, PitPlan, PitToDraw, PlanPlace } from './drawing.ts';
