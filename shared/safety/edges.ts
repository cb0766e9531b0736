import type { MinimumAges, SafetyRules } from './rules.ts';
import type { PieceMet, StationUse } from './situation.ts';
import {
  EDGE_CLASSES,
  EXPOSURES,
  USUAL_EXPOSURE,
  type EdgeClass,
  type Exposure,
  type StationKind,
} from './vocabulary.ts';

/** The type that stands for a stone just struck. */
const NEWLY_STRUCK = 'fresh-flake';

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
  const { finds = [], pieces = [], edgeClass } = station;
  const types = finds.map((type) => edgeOfType(rules, type));
  const edges = [
    ...(edgeClass === undefined ? types : [edgeClass, ...types.map(bluntestOf)]),
    ...pieces.map(({ edge }) => edge),
  ];
  if (edges.length > 0) return edges.reduce(sharper);
  return station.kind === 'sharp-handling' ? 'E3' : null;
}

/**
 * The class of one piece in the hand. A copy newly struck is sharper than the find it copies; a stated class is never
 * blunter than rubbing down can make the type.
 *
 * @param type The type of the find, or of its blunt copy.
 * @param isNewlyStruck A copy in stone or glass with edges as they broke.
 * @param stated As checked that day; undefined where nobody has said.
 * @example edgeOfPiece(rules, 'end-scraper', true, undefined) // 'E3'
 */
export function edgeOfPiece(
  rules: Pick<SafetyRules, 'edgeOfType'>,
  type: string,
  isNewlyStruck: boolean,
  stated: EdgeClass | undefined,
): EdgeClass {
  const edge = edgeOfType(rules, type);
  if (stated !== undefined) return sharper(bluntestOf(edge), stated);
  return isNewlyStruck && edge !== 'E0' ? sharper(edge, edgeOfType(rules, NEWLY_STRUCK)) : edge;
}

/** An edge that a child can come upon by more than looking. */
const isInReach = ({ edge, exposure }: PieceMet): boolean => edge !== 'E0' && exposure !== 'look';

/** Edges in the hand make a handling table for real flint, whatever the station is called. */
export function properStation(rules: Pick<SafetyRules, 'edgeOfType'>, station: StationUse): StationUse {
  const { pieces = [], ...others } = station;
  const edge = edgeAtStation(rules, others);
  const isTable = station.kind === 'blunt-handling' || station.kind === 'table-activity';
  const isSharp = edge !== null && isInReach({ edge, exposure: station.exposure ?? USUAL_EXPOSURE });
  return isTable && (isSharp || pieces.some(isInReach)) ? { ...station, kind: 'sharp-handling' } : station;
}

/**
 * A table of pieces in the hand, by what lies on it: real edges, or else bone and antler, or else blunt things.
 *
 * @param ofAnimal Whether a piece that is lifted or touched is bone or antler.
 * @example handlingTable([{ edge: 'E0', exposure: 'look' }], false) // 'blunt-handling'
 */
export function handlingTable(pieces: readonly PieceMet[], ofAnimal: boolean): StationKind {
  if (pieces.some(isInReach)) return 'sharp-handling';
  return ofAnimal ? 'animal-materials' : 'blunt-handling';
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

/** The sharpest class that children meet at a station, and how near; of pieces in reach before those only looked at. */
export function nearestAt(
  rules: Pick<SafetyRules, 'edgeOfType'>,
  station: StationUse,
): { readonly edge: EdgeClass | null; readonly exposure: Exposure } {
  const { pieces = [], exposure = USUAL_EXPOSURE } = station;
  const inReach = pieces.filter((piece) => piece.exposure !== 'look');
  const [sharpest] = (inReach.length > 0 ? inReach : pieces).toSorted(
    (a, b) => EDGE_CLASSES.indexOf(b.edge) - EDGE_CLASSES.indexOf(a.edge),
  );
  return sharpest ?? { edge: edgeAtStation(rules, station), exposure };
}
