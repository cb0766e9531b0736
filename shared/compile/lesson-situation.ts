import { shownFinds } from '../activities/index.ts';
import { youngest } from '../library/bands.ts';
import {
  edgeOfType,
  plainSituation,
  type Hazard,
  type SafetyRules,
  type Setting,
  type Situation,
} from '../safety/index.ts';
import type { Plan } from './plan.ts';
import { workNamed } from './work-named.ts';

/** Who comes to a lesson, and where it is held. */
export interface Comers {
  readonly children: number;
  /** Whole years of the youngest child; that of the youngest band where it is null. */
  readonly youngest: number | null;
  readonly frameworks: readonly string[];
  readonly localChildrenPerAdult: number | null;
  readonly setting: Setting;
}

/** The age a lesson's youngest band begins at, in whole years. @example ageFrom({ bands: ['9-11', '7-9'] }) // 7 */
export const ageFrom = ({ bands }: Pick<Plan, 'bands'>): number => Number.parseInt(youngest(bands), 10);

const typesShown = (plan: Plan): readonly string[] => [
  ...new Set(plan.activities.flatMap((activity) => shownFinds(activity).map(({ objectType }) => objectType))),
];

/** The situation of a lesson as its file has it: one table, drawings to look at, no piece in the hand. */
export function lessonSituation(plan: Plan, comers: Comers): Situation {
  const age = comers.youngest ?? ageFrom(plan);
  const finds = typesShown(plan);
  return {
    ...plainSituation(comers.children, age, comers.frameworks, comers.setting),
    localChildrenPerAdult: comers.localChildrenPerAdult,
    kinds: [...new Set<string>(plan.activities.map(({ kind }) => kind))],
    stations: [{ kind: 'table-activity', childrenAtOnce: comers.children, exposure: 'look', finds }],
  };
}

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
