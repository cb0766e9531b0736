import { lessonReport, lessonSetting, type Plan } from '../compile/index.ts';
import { youngestAge, type Library } from '../library/index.ts';
import { plainSituation, type SafetyReport, type SafetyRules } from '../safety/index.ts';

/** Class sizes the papers reckon adults and kit for. */
export const CLASS_SIZES = [10, 20, 30] as const;

/** Every framework whose ratios are held: all but the one whose figure a leader types. */
export const frameworksHeld = (rules: SafetyRules): readonly string[] => [
  ...new Set(
    rules.ratios.flatMap(({ framework, childrenPerAdult }) => (childrenPerAdult === null ? [] : [framework])),
  ),
];

/**
 * What the rules make of a class of a size at a lesson and its stations, by the youngest of its bands.
 *
 * @param frameworks The strictest of them counts; all that are held where none are named.
 */
export function lessonSafety(
  plan: Plan,
  library: Pick<Library, 'safety'>,
  pupils: number,
  frameworks: readonly string[] = frameworksHeld(library.safety),
): SafetyReport {
  const group = plainSituation(pupils, youngestAge(plan.bands), frameworks, lessonSetting(plan));
  return lessonReport(library.safety, plan, group);
}
