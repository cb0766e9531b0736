import type { KindName } from '../../shared/activities/index.ts';
import type { StationCard } from '../../shared/compile/index.ts';
import type { StationKind } from '../../shared/safety/index.ts';
import { activitySteps, stationSteps } from '../../shared/words/index.ts';

const byKind: Readonly<Record<KindName, readonly string[]>> = activitySteps;
const byStation: Readonly<Record<StationKind, readonly string[]>> = stationSteps;

/** How a station is run, step by step. */
export const runSteps = ({ activity, station }: StationCard): readonly string[] =>
  activity === null ? byStation[station.kind] : byKind[activity.kind];
