import {
  hazardsOf,
  inOrder,
  lessonSituation,
  safetyReport,
  signsOf,
  stationRule,
  strictestReport,
  type SafetyReport,
  type SafetyRules,
  type Setting,
  type Situation,
  type StationUse,
} from '../safety/index.ts';
import { handlingTables } from './handling-tables.ts';
import { USUAL_SETTING, type Plan } from './plan.ts';
import { typesShown } from './standing-hazards.ts';

/** Where a lesson is: where it says, or else in a classroom. */
export const lessonSetting = ({ visit }: Plan): Setting => visit?.setting ?? USUAL_SETTING;

/** Whoever is at no station is at tables with the lesson, where tables may stand. */
function tablesFor(
  rules: SafetyRules,
  group: Situation,
  stations: readonly StationUse[],
): readonly StationUse[] {
  const busy = stations.reduce((sum, { childrenAtOnce }) => sum + childrenAtOnce, 0);
  const left = group.children - busy;
  const mayStand = stationRule(rules, 'table-activity').settings.includes(group.setting);
  return left > 0 && mayStand ? lessonSituation(rules, { ...group, children: left }, []).stations : [];
}

/** The groups of stations that run together: what the visit states, beside each table of pieces in turn. */
function together(plan: Plan): readonly (readonly StationUse[])[] {
  const stated = plan.visit?.stations ?? [];
  const tables = handlingTables(plan);
  return tables.length === 0 ? [stated] : tables.map((table) => [...stated, table]);
}

/**
 * What the rules make of a group at a lesson: at tables with its drawings, at the stations it states, all running
 * together, and at its tables of pieces, one after another; at each as many as stated, or the whole group where that is
 * fewer.
 *
 * @param group Who comes, and where; its own stations and kinds are not looked at.
 */
export function lessonReport(rules: SafetyRules, plan: Plan, group: Situation): SafetyReport {
  const kinds = plan.activities.map(({ kind }) => kind);
  const atTables = lessonSituation(rules, group, kinds, typesShown(plan));
  const parts = together(plan).filter((stations) => stations.length > 0);
  if (parts.length === 0) return safetyReport(rules, atTables);
  const report = strictestReport(
    rules,
    parts.map((part) => {
      const stated = part.map((station) => ({
        ...station,
        childrenAtOnce: Math.min(station.childrenAtOnce, group.children),
      }));
      return safetyReport(rules, {
        ...atTables,
        stations: [...stated, ...tablesFor(rules, group, stated)],
      });
    }),
  );
  // The lesson is held some time, whoever is at the stations meanwhile.
  const ofLesson = hazardsOf(rules, atTables);
  const hazards = rules.hazards.filter(({ id }) =>
    [...report.hazards, ...ofLesson].some((hazard) => hazard.id === id),
  );
  return {
    ...report,
    hazards,
    controls: hazards.flatMap(({ controls }) => inOrder(controls)),
    signs: signsOf(rules, hazards),
  };
}
