export { addUp, claimLines, type AddedUp, type ClaimLine } from './add-up.ts';
export { bandPlan } from './band-plan.ts';
export { checkDay } from './check-day.ts';
export { checkLesson } from './check-lesson.ts';
export { readingTarget } from './check-reading.ts';
export { compileLesson, type CompiledLesson } from './compile-lesson.ts';
export {
  dayMoments,
  daySetting,
  plainStations,
  strictestMoment,
  type DayAsked,
  type DayMoment,
} from './day-adults.ts';
export { handlingTables } from './handling-tables.ts';
export { lessonReport, lessonSetting } from './lesson-report.ts';
export { stationCards, type StationCard } from './station-cards.ts';
export { standingHazards, typesShown } from './standing-hazards.ts';
export { KIT_THINGS, visitKit, type KitCount, type KitThing, type VisitKit } from './visit-kit.ts';
export { workNamed } from './work-named.ts';
export type { Plan, PlanClaim, PlanPart, PlanVisit } from './plan.ts';
