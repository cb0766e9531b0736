import { shownFinds } from '../activities/index.ts';
import { edgeOfType, type Hazard, type SafetyRules } from '../safety/index.ts';
import type { Plan } from './plan.ts';
import { workNamed } from './work-named.ts';

/** The types of object a lesson shows, each once. */
export const typesShown = (plan: Plan): readonly string[] => [
  ...new Set(plan.activities.flatMap((activity) => shownFinds(activity).map(({ objectType }) => objectType))),
];

/** Hazards of what a lesson shows or speaks of; wherever there is one, the standing caution stands. */
export function standingHazards(rules: SafetyRules, plan: Plan): readonly Hazard[] {
  const named = workNamed(plan);
  const edges = new Set([...named.edges, ...typesShown(plan).map((type) => edgeOfType(rules, type))]);
  return rules.hazards.filter(
    ({ arises }) =>
      arises.edges.some((edge) => edges.has(edge)) ||
      arises.stations.some((station) => named.works.includes(station)),
  );
}
