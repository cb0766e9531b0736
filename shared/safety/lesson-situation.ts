import { stationRule } from './adults.ts';
import type { SafetyRules } from './rules.ts';
import type { Situation, StationUse } from './situation.ts';

/**
 * A class at its lesson: everyone at tables with drawings, on screen or on paper; more tables where one is full.
 *
 * @param kinds The activity kinds of the lesson, for the hazards they bring.
 * @param types The types of object it shows: drawn, to look at, so that a lesson of edges lists them as a hazard.
 */
export function lessonSituation(
  rules: Pick<SafetyRules, 'stations'>,
  group: Situation,
  kinds: readonly string[],
  types: readonly string[] = [],
): Situation {
  const most = stationRule(rules, 'table-activity').maximumAtOnce;
  const tables = Math.max(1, Math.ceil(group.children / most));
  const stations = Array.from({ length: tables }, (_, index): StationUse => ({
    kind: 'table-activity',
    childrenAtOnce: Math.min(most, group.children - index * most),
    ...(types.length === 0 ? {} : { finds: types, exposure: 'look' as const }),
  }));
  return { ...group, kinds: [...new Set(kinds)], stations };
}
