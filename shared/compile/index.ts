export { compileLesson, type CompiledLesson } from './compile-lesson.ts';
export { ageFrom, lessonSituation, standingHazards, type Comers } from './lesson-situation.ts';
export type { Plan, PlanPart } from './plan.ts';
export { workNamed } from './work-named.ts';
