export { compileLesson, type CompiledLesson } from './compile-lesson.ts';
export type { Plan, PlanClaim, PlanPart } from './plan.ts';
