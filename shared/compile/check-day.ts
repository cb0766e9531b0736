import type { Day } from '../day/index.ts';
import { hasErrors, type Fault, type Path, type WrittenStation } from '../lesson/index.ts';
import { dayFile, type DayParts } from '../library/day-file.ts';
import { readDay, readYamlFile, type ReadFile } from '../library/index.ts';
import { plainSituation, safetyReport, type SafetyRules, type Setting } from '../safety/index.ts';
import { stationFault } from './check-visit.ts';
import { stationUse } from './read-visit.ts';

/** Where a day is that does not say: a field, so that what wants a roof is not let through. ASM. */
const PLAIN_SETTING: Setting = 'outdoors';

/** Keys of a day's station that are not in its `work`. */
const OWN_KEYS: Readonly<Record<string, string>> = { kind: 'kind', children: 'pupils' };

/** What the safety rules refuse or hold of one station of a day, for the youngest group that may come to it. */
function faultsAt(rules: SafetyRules, day: DayParts, key: string): readonly Fault[] {
  const station = day.stations[key];
  if (station === undefined || (station.kind === undefined && station.work === undefined)) return [];
  const ages = Object.values(day.groups)
    .map((group) => Number(group.ages.split('-')[0]))
    .filter((years) => years >= (station['from-age'] ?? 0));
  // Where no group may come nobody is refused.
  if (ages.length === 0) return [];
  const youngest = Math.min(...ages);
  const setting = day.setting ?? PLAIN_SETTING;
  const written: WrittenStation = {
    kind: station.kind ?? 'table-activity',
    children: station.pupils,
    ...station.work,
  };
  const use = stationUse(written, written.finds, station.pupils);
  const situation = { ...plainSituation(0, youngest, [], setting), stations: [use] };
  const pathTo = (within: Path): Path => {
    const own = OWN_KEYS[String(within[0])];
    if (own === 'kind' && station.kind === undefined) return ['stations', key];
    return own === undefined ? ['stations', key, 'work', ...within] : ['stations', key, own];
  };
  return safetyReport(rules, situation).refusals.map((refusal) =>
    stationFault(rules, refusal, { written, use, setting, youngest, pathTo }),
  );
}

/**
 * Reads a day file and holds its stations against the safety rules: what must never be asked of children is an error at its
 * place, and the day is not handed on to be planned.
 *
 * @example checkDay('days/a.yaml', text, library.safety).value // null where a station is refused
 */
export function checkDay(file: string, text: string, rules: SafetyRules): ReadFile<Day> {
  const read = readDay(file, text);
  const parts = read.value === null ? null : readYamlFile(file, text, dayFile).value;
  if (parts === null) return read;
  const refused = read.place(Object.keys(parts.stations).flatMap((key) => faultsAt(rules, parts, key)));
  return {
    ...read,
    value: hasErrors(refused) ? null : read.value,
    problems: [...read.problems, ...refused],
  };
}
