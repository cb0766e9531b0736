import { typesShown, type Plan } from '../../shared/compile/index.ts';
import { youngest, type Library } from '../../shared/library/index.ts';
import {
  lessonSituation,
  plainSituation,
  safetyReport,
  type SafetyReport,
} from '../../shared/safety/index.ts';

/** Class sizes the safety sheet reckons adults for. */
export const CLASS_SIZES = [10, 20, 30] as const;

/** What the rules make of a class of a size at a lesson, by the youngest of its bands. */
export function lessonSafety(plan: Plan, library: Library, pupils: number): SafetyReport {
  const age = Number(youngest(plan.bands).split('-')[0]);
  const group = plainSituation(pupils, age, ['england-visits'], 'classroom');
  const kinds = plan.activities.map(({ kind }) => kind);
  return safetyReport(library.safety, lessonSituation(library.safety, group, kinds, typesShown(plan)));
}
