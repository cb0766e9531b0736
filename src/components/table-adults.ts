import { lessonSetting, type Plan } from '../../shared/compile/index.ts';
import { youngestAge, type Library } from '../../shared/library/index.ts';
import { plainSituation, safetyReport, type StationUse } from '../../shared/safety/index.ts';

/** Who must be at one table of pieces while children are there, by the youngest of the lesson's bands. */
export function tableAdults(
  plan: Plan,
  { safety }: Library,
  table: StationUse,
): { readonly age: number; readonly practitioners: number; readonly supervisors: number } {
  const age = youngestAge(plan.bands);
  const group = plainSituation(table.childrenAtOnce, age, [], lessonSetting(plan));
  const { adults } = safetyReport(safety, { ...group, stations: [table] });
  return { age, practitioners: adults.practitioners, supervisors: adults.stationSupervisors };
}
