import type { Fault, Path, WrittenStation, WrittenVisit } from '../lesson/index.ts';
import {
  edgeAtStation,
  nearestAllowed,
  plainSituation,
  safetyReport,
  type Refusal,
  type SafetyRules,
  type StationUse,
} from '../safety/index.ts';
import { visitProblems } from '../words/en/visit-problems.ts';
import type { PlanVisit } from './plan.ts';

/** What pupils may never do, by the refusal that meets it. */
const ACTS = { X01: 'flake', X02: 'swing', X04: 'grind', X15: 'heat', X16: 'throw' } as const;

/** The keys a refusal may be about, the likeliest first; of a station of which nothing is said, its kind. */
const KEYS: Readonly<Record<string, readonly (keyof WrittenStation)[]>> = {
  X03: ['dry'],
  X05: ['exposure', 'finds', 'edge'],
  X06: ['powered-tool'],
  X12: ['spectators-at-metres'],
  X13: ['plant-working', 'open-edge-at-metres'],
  X19: ['children'],
  X22: ['raw-materials'],
};

const isAct = (id: string): id is keyof typeof ACTS => Object.hasOwn(ACTS, id);

/** The way to what is refused within its station. */
function pathWithin(id: string, station: WrittenStation): Path {
  if (isAct(id)) return ['pupils', station.pupils?.indexOf(ACTS[id]) ?? 0];
  const isSaid = (key: keyof WrittenStation): boolean => station[key] !== undefined && station[key] !== false;
  return [KEYS[id]?.find(isSaid) ?? 'kind'];
}

/** What stands there, as the lead wrote it. */
function writtenThere(path: Path, station: WrittenStation, setting: string): string {
  const [key, index] = path;
  if (key === 'kind') return `${station.kind}, ${setting}`;
  // The first step of a path within a station is one of its keys.
  const value = station[key as keyof WrittenStation];
  const shown = Array.isArray(value)
    ? index === undefined
      ? value.join(', ')
      : value[Number(index)]
    : value;
  return `${String(key)}: ${String(shown)}`;
}

/** A station as it was written and as the rules read it, with whom it is for. */
export interface StationAsked {
  readonly written: WrittenStation;
  readonly use: StationUse;
  readonly setting: string;
  /** Whole years of the youngest child who may come. */
  readonly youngest: number;
  /** Where the station, or one of its keys, stands in its file. */
  readonly pathTo: (within: Path) => Path;
}

/** What the rules say against a station, at its place: an error where they refuse, a caution where they hold. */
export function stationFault(rules: SafetyRules, refusal: Refusal, asked: StationAsked): Fault {
  const { id, outcome, say, mend } = refusal;
  const { written, use, setting, youngest } = asked;
  const within = pathWithin(id, written);
  const there = writtenThere(within, written, setting);
  const path = asked.pathTo(within);
  const edge = edgeAtStation(rules, use);
  if (id === 'X05' && edge !== null) {
    const nearer = nearestAllowed(rules.minimumAges, edge, youngest);
    const replacement = within[0] === 'exposure' && nearer !== null ? { replacement: nearer } : {};
    return {
      code: 'visit-refused',
      grade: 'error',
      path,
      ...visitProblems.tooSharp(id, say, there, edge, youngest, nearer),
      ...replacement,
    };
  }
  const words = visitProblems.refused(id, say, there, mend);
  return outcome === 'refuse'
    ? { code: 'visit-refused', grade: 'error', path, ...words }
    : { code: 'visit-held', grade: 'caution', path, ...words };
}

/**
 * What the safety rules refuse of a stated visit, each an error at its place; what they hold, a caution.
 *
 * @param youngest Whole years of the youngest child of the lesson's bands.
 */
export function visitFaults(
  rules: SafetyRules,
  written: WrittenVisit,
  { setting, stations }: PlanVisit,
  youngest: number,
): readonly Fault[] {
  const situation = { ...plainSituation(0, youngest, [], setting), stations };
  return safetyReport(rules, situation).refusals.flatMap((refusal): readonly Fault[] => {
    const said = written.stations[refusal.station];
    const use = stations[refusal.station];
    return said === undefined || use === undefined
      ? []
      : [
          stationFault(rules, refusal, {
            written: said,
            use,
            setting,
            youngest,
            pathTo: (within) => ['visit', 'stations', refusal.station, ...within],
          }),
        ];
  });
}
