import { tableOf, type Activity } from '../activities/index.ts';
import { youngestAge } from '../library/bands.ts';
import {
  computeAdults,
  kitOf,
  nearestAt,
  plainSituation,
  properStation,
  stationRule,
  type Hazard,
  type KitList,
  type SafetyRules,
  type StationRule,
  type StationUse,
} from '../safety/index.ts';
import { lessonSetting } from './lesson-report.ts';
import type { Plan } from './plan.ts';

/** One station as its helper reads it: an activity at its tables, or a station the lesson states. */
export interface StationCard {
  readonly activity: Activity | null;
  readonly station: StationUse;
  readonly rule: StationRule;
  /** Supervisors for the children at once; practitioners stand beside them and are in `rule`. */
  readonly supervisors: number;
  /** What must be there before it opens; the lists of every visit are not among them. */
  readonly kit: readonly KitList[];
  /** Hazards this station brings by itself, in the order of the rules. */
  readonly hazards: readonly Hazard[];
}

/** Hazards a station brings, and not those of the place, the weather or every visit. */
function hazardsAt(rules: SafetyRules, station: StationUse, kind: string | null): readonly Hazard[] {
  // What lies at a table is met; what an activity only draws is not.
  const edge = kind === null || station.pieces !== undefined ? nearestAt(rules, station).edge : null;
  return rules.hazards.filter(
    ({ arises }) =>
      arises.stations.includes(station.kind) ||
      (kind !== null && arises.kinds.includes(kind)) ||
      (edge !== null && arises.edges.includes(edge)),
  );
}

/**
 * A card for each activity of a lesson, in its order, then one for each station it states.
 *
 * @example stationCards(rules, plan).map(({ rule }) => rule.name)
 */
export function stationCards(rules: SafetyRules, plan: Plan): readonly StationCard[] {
  const table = stationRule(rules, 'table-activity');
  const cardOf = (station: StationUse, activity: Activity | null): StationCard => {
    const group = plainSituation(station.childrenAtOnce, youngestAge(plan.bands), [], lessonSetting(plan));
    const situation = { ...group, stations: [station] };
    const rule = stationRule(rules, station.kind);
    return {
      activity,
      station,
      rule,
      supervisors: computeAdults(rules, situation).stationSupervisors,
      kit: kitOf(rules, situation).filter(({ id }) => rule.kit.includes(id)),
      hazards: hazardsAt(rules, station, activity?.kind ?? null),
    };
  };
  return [
    ...plan.activities.map((activity) =>
      cardOf(tableOf(activity) ?? { kind: table.id, childrenAtOnce: table.maximumAtOnce }, activity),
    ),
    ...(plan.visit?.stations ?? []).map((station) => cardOf(properStation(rules, station), null)),
  ];
}
