import type { MinimumAges, SafetyRules } from './rules.ts';
import type { StationUse } from './situation.ts';
import { EDGE_CLASSES, EXPOSURES, type EdgeClass, type Exposure } from './vocabulary.ts';

/** The class of a type of object before the piece is checked; a type nobody classed is the sharpest. */
export const edgeOfType = (rules: Pick<SafetyRules, 'edgeOfType'>, type: string): EdgeClass =>
  rules.edgeOfType[type] ?? 'E3';

/** The sharper of two classes. @example sharper('E0', 'E2') // 'E2' */
export const sharper = (a: EdgeClass, b: EdgeClass): EdgeClass =>
  EDGE_CLASSES.indexOf(a) >= EDGE_CLASSES.indexOf(b) ? a : b;

/** The bluntest a piece can be called: a sharp one may have been rubbed down and checked, nothing else changes class (ASM). */
const bluntestOf = (edge: EdgeClass): EdgeClass => (edge === 'E2' ? 'E1' : edge);

/**
 * The sharpest class at a station: what it says itself, never blunter than its finds can be made, or else that of its
 * finds. Real flint of which nothing is said is the sharpest; null where a station has no pieces in the hand.
 *
 * @example edgeAtStation(rules, { kind: 'sharp-handling', childrenAtOnce: 6, edgeClass: 'E0', finds: ['flake'] }) // 'E1'
 */
export function edgeAtStation(rules: Pick<SafetyRules, 'edgeOfType'>, station: StationUse): EdgeClass | null {
  const edges = (station.finds ?? []).map((type) => edgeOfType(rules, type));
  if (station.edgeClass !== undefined) return edges.map(bluntestOf).reduce(sharper, station.edgeClass);
  if (edges.length > 0) return edges.reduce(sharper);
  return station.kind === 'sharp-handling' ? 'E3' : null;
}

/** Edges in the hand make a handling table for real flint, whatever the station is called. */
export function properStation(rules: Pick<SafetyRules, 'edgeOfType'>, station: StationUse): StationUse {
  const edge = edgeAtStation(rules, station);
  const isTable = station.kind === 'blunt-handling' || station.kind === 'table-activity';
  return isTable && edge !== null && edge !== 'E0' && station.exposure !== 'look'
    ? { ...station, kind: 'sharp-handling' }
    : station;
}

/** Whether a child of an age may be so near to a class of edge. */
export function mayMeet(ages: MinimumAges, edge: EdgeClass, exposure: Exposure, age: number): boolean {
  const least = ages[edge][exposure];
  return least !== null && age >= least;
}

/**
 * The nearest a child of an age may come to a class of edge; null where even looking is too near.
 *
 * @example nearestAllowed(rules.minimumAges, 'E2', 8) // 'touch-held'
 */
export const nearestAllowed = (ages: MinimumAges, edge: EdgeClass, age: number): Exposure | null =>
  EXPOSURES.findLast((exposure) => mayMeet(ages, edge, exposure, age)) ?? null;
