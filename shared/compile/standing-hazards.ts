import { shownFinds } from '../activities/index.ts';
import { edgeAtStation, edgeOfType, type Hazard, type SafetyRules } from '../safety/index.ts';
import { handlingTables } from './handling-tables.ts';
import type { Plan } from './plan.ts';
import { workNamed } from './work-named.ts';

/** The types of object a lesson shows, each once. */
export const typesShown = (plan: Plan): readonly string[] => [
  ...new Set(plan.activities.flatMap((activity) => shownFinds(activity).map(({ objectType }) => objectType))),
];

/** Hazards of what a lesson shows, speaks of or runs at a station; wherever there is one, the standing caution stands. */
export function standingHazards(rules: SafetyRules, plan: Plan): readonly Hazard[] {
  const named = workNamed(plan);
  const stations = [...(plan.visit?.stations ?? []), ...handlingTables(plan)];
  const works = new Set([...named.works, ...stations.map(({ kind }) => kind)]);
  const edges = new Set([
    ...named.edges,
    ...typesShown(plan).map((type) => edgeOfType(rules, type)),
    ...stations.flatMap((station) => edgeAtStation(rules, station) ?? []),
  ]);
  return rules.hazards.filter(
    ({ arises }) =>
      arises.edges.some((edge) => edges.has(edge)) || arises.stations.some((station) => works.has(station)),
  );
}
