import { shownFinds } from '../../shared/activities/index.ts';
import { ageFrom, lessonSituation, type Plan } from '../../shared/compile/index.ts';
import {
  computeAdults,
  edgeOfType,
  safetyReport,
  type EdgeClass,
  type RatioRule,
  type SafetyReport,
  type SafetyRules,
} from '../../shared/safety/index.ts';

/** Sizes of class the sheet reckons adults for: ours (ASM). */
export const CLASS_SIZES = [10, 20, 30] as const;

const comers = (children: number, frameworks: readonly string[]) =>
  ({ children, youngest: null, frameworks, localChildrenPerAdult: null, setting: 'classroom' }) as const;

/** What follows from a lesson held in a classroom; nobody is named yet. */
export const lessonReport = (rules: SafetyRules, plan: Plan): SafetyReport =>
  safetyReport(rules, lessonSituation(plan, comers(Math.max(...CLASS_SIZES), [])));

/** Types of object a lesson shows, by the class of their edges; classes with none are left out. */
export function typesByEdge(
  rules: SafetyRules,
  plan: Plan,
): readonly { readonly edge: EdgeClass; readonly types: readonly string[] }[] {
  const types = [
    ...new Set(plan.activities.flatMap((activity) => shownFinds(activity).map((find) => find.objectType))),
  ];
  return rules.edges
    .map(({ id }) => ({ edge: id, types: types.filter((type) => edgeOfType(rules, type) === id) }))
    .filter((row) => row.types.length > 0);
}

/** For each framework with a figure for the lesson's youngest: the least supervisors of each size of class. */
export function supervisorsByFramework(
  rules: SafetyRules,
  plan: Plan,
): readonly { readonly ratio: RatioRule; readonly supervisors: readonly number[] }[] {
  const age = ageFrom(plan);
  return rules.ratios
    .filter((row) => row.childrenPerAdult !== null && age >= row.ageFrom && age <= row.ageTo)
    .map((ratio) => ({
      ratio,
      supervisors: CLASS_SIZES.map(
        (children) =>
          computeAdults(rules, lessonSituation(plan, comers(children, [ratio.framework]))).supervisors,
      ),
    }));
}
