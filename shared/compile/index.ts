export { compileLesson, type CompiledLesson } from './compile-lesson.ts';
export type { Plan, PlanPart } from './plan.ts';
