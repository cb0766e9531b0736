export { compileLesson, type CompiledLesson } from './compile-lesson.ts';
export { handlingTables } from './handling-tables.ts';
export { lessonReport, lessonSetting } from './lesson-report.ts';
export { standingHazards, typesShown } from './standing-hazards.ts';
export { workNamed } from './work-named.ts';
export type { Plan, PlanClaim, PlanPart, PlanVisit } from './plan.ts';
