import { edgeAtStation } from './edges.ts';
import {
  CONTROL_LEVELS,
  type Control,
  type Hazard,
  type KitList,
  type SafetyRules,
  type Sign,
} from './rules.ts';
import { stationRule } from './adults.ts';
import type { Situation } from './situation.ts';
import type { Flag, Setting } from './vocabulary.ts';

const OUTDOORS: readonly Setting[] = ['outdoors', 'open-sided-shelter', 'dig-site', 'construction-site'];
/** Below this age a child counts as an under-five. */
const FIVE = 5;

/** What was said, and what follows from it: out of doors, small children, an open cut on a site. */
function flagsOf({ flags, setting, youngest }: Situation): ReadonlySet<Flag> {
  return new Set<Flag>([
    ...flags,
    ...(OUTDOORS.includes(setting) ? (['outdoors'] as const) : []),
    ...(youngest < FIVE ? (['under-fives-present'] as const) : []),
  ]);
}

/** The hazards of a situation, in the order of the rules: always, or any overlap. */
export function hazardsOf(rules: SafetyRules, situation: Situation): readonly Hazard[] {
  const flags = flagsOf(situation);
  const edges = new Set(situation.stations.flatMap((station) => edgeAtStation(rules, station) ?? []));
  return rules.hazards.filter(
    ({ arises }) =>
      arises.always ||
      arises.kinds.some((kind) => situation.kinds.includes(kind)) ||
      arises.stations.some((kind) => situation.stations.some((station) => station.kind === kind)) ||
      arises.settings.includes(situation.setting) ||
      arises.flags.some((flag) => flags.has(flag)) ||
      arises.edges.some((edge) => edges.has(edge)),
  );
}

/** Controls strongest first, as they are always printed. */
export const inOrder = (controls: readonly Control[]): readonly Control[] =>
  controls.toSorted((a, b) => CONTROL_LEVELS.indexOf(a.level) - CONTROL_LEVELS.indexOf(b.level));

/** What must be there before each station opens, and what every visit carries; each list once. */
export function kitOf(rules: SafetyRules, situation: Situation): readonly KitList[] {
  const wanted = new Set([
    'kit-base',
    ...situation.stations.flatMap(({ kind }) => stationRule(rules, kind).kit),
  ]);
  return rules.kit.filter(({ id }) => wanted.has(id));
}

/** The registered signs the hazards call for: numbers and titles, to be bought or written out. */
export const signsOf = (rules: SafetyRules, hazards: readonly Hazard[]): readonly Sign[] =>
  rules.signs.filter(({ id }) => hazards.some(({ signs }) => signs.includes(id)));
