import type { WrittenStation } from '../lesson/index.ts';
import {
  edgeAtStation,
  USUAL_EXPOSURE,
  type PieceMet,
  type SafetyRules,
  type StationUse,
} from '../safety/index.ts';

/** What is done at a station, as a day file writes it. */
export type StationWork = Omit<WrittenStation, 'kind' | 'children'>;

/** No child is so old. */
const NEVER = Number.POSITIVE_INFINITY;

/** The piece that the oldest child is needed for: where it is allowed, all the others are. */
const strictest = (rules: Pick<SafetyRules, 'minimumAges'>, pieces: readonly PieceMet[]): PieceMet | null => {
  const ageFor = ({ edge, exposure }: PieceMet): number => rules.minimumAges[edge][exposure] ?? NEVER;
  return pieces.reduce<PieceMet | null>(
    (most, piece) => (most === null || ageFor(piece) > ageFor(most) ? piece : most),
    null,
  );
};

const ifSaid = <Key extends keyof StationWork>(
  key: Key,
  value: StationWork[Key] | undefined,
): Partial<StationWork> => (value === undefined ? {} : { [key]: value });

/** How near a child comes to what: of a table of pieces, the strictest of them. */
function nearness(rules: Pick<SafetyRules, 'minimumAges' | 'edgeOfType'>, use: StationUse): StationWork {
  const { pieces = [], ...others } = use;
  if (pieces.length === 0)
    return {
      ...ifSaid('finds', use.finds === undefined ? undefined : [...use.finds]),
      ...ifSaid('edge', use.edgeClass),
      ...ifSaid('exposure', use.exposure),
    };
  const isSaid = others.finds !== undefined || others.edgeClass !== undefined;
  const edge = isSaid ? edgeAtStation(rules, others) : null;
  const met = edge === null ? pieces : [...pieces, { edge, exposure: use.exposure ?? USUAL_EXPOSURE }];
  const most = strictest(rules, met);
  return most === null ? {} : { edge: most.edge, exposure: most.exposure };
}

/**
 * A station as the safety rules read it, written for a day: refused there for the same ages, and for the same reasons. A day
 * knows one class of edge a station, so a table of pieces is written as the piece that asks for the oldest child.
 *
 * @example stationWork(rules, { kind: 'knapping-demo', childrenAtOnce: 15, spectatorsAtMetres: 6 }) // { 'spectators-at-metres': 6 }
 */
export function stationWork(
  rules: Pick<SafetyRules, 'minimumAges' | 'edgeOfType'>,
  use: StationUse,
): StationWork {
  const does = [
    use.pupilsFlake === true ? (['flake'] as const) : [],
    use.pupilsSwing === true ? (['swing'] as const) : [],
    use.pupilsGrind === true ? (['grind'] as const) : [],
    use.pupilsHeat === true ? (['heat'] as const) : [],
    use.pupilsThrow === true ? (['throw'] as const) : [],
  ].flat();
  return {
    ...nearness(rules, use),
    ...ifSaid('pupils', does.length === 0 ? undefined : does),
    ...ifSaid('spectators-at-metres', use.spectatorsAtMetres),
    ...ifSaid('open-edge-at-metres', use.metresToUnbarrieredEdge),
    ...ifSaid('plant-working', use.plantWorkingOnRoute),
    ...ifSaid('dry', use.dry),
    ...ifSaid('powered-tool', use.poweredTool),
    ...ifSaid('raw-materials', use.rawMaterials),
  };
}
