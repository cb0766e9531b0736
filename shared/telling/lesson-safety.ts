import { lessonReport, lessonSetting, type Plan } from '../compile/index.ts';
import { youngestAge, type Library } from '../library/index.ts';
import { plainSituation, type SafetyReport } from '../safety/index.ts';

/** Class sizes the safety sheet reckons adults for. */
export const CLASS_SIZES = [10, 20, 30] as const;

/** What the rules make of a class of a size at a lesson and its stations, by the youngest of its bands. */
export function lessonSafety(plan: Plan, library: Library, pupils: number): SafetyReport {
  const age = youngestAge(plan.bands);
  const group = plainSituation(pupils, age, ['england-visits'], lessonSetting(plan));
  return lessonReport(library.safety, plan, group);
}
