import { tableOf } from '../activities/index.ts';
import type { StationUse } from '../safety/index.ts';
import type { Plan } from './plan.ts';

/** The tables of a lesson where pieces are met, one an activity. */
export const handlingTables = ({ activities }: Plan): readonly StationUse[] =>
  activities.flatMap((activity) => tableOf(activity) ?? []);
