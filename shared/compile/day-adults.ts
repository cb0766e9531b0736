import type { Day, DayPlan, Doing } from '../day/index.ts';
import {
  plainSituation,
  safetyReport,
  SETTINGS,
  STATION_KINDS,
  stationRule,
  type SafetyReport,
  type SafetyRules,
  type Setting,
  type StationKind,
} from '../safety/index.ts';

/** Groups that are together in a slot, and what the rules make of them there. */
export interface MomentPart {
  readonly groups: readonly string[];
  readonly children: number;
  readonly youngest: number;
  /** The station's name; null at lunch or between stations. */
  readonly station: string | null;
  readonly kind: StationKind | null;
  readonly report: SafetyReport;
}

/** A slot of a day, with the adults of all its groups together. */
export interface DayMoment {
  readonly slot: number;
  readonly parts: readonly MomentPart[];
  readonly supervisors: number;
  readonly practitioners: number;
  readonly totalAdults: number;
  readonly eyeSetsNeeded: number;
}

/** What is asked besides the day itself. */
export interface DayAsked {
  readonly frameworks: readonly string[];
  readonly localChildrenPerAdult: number | null;
  /** Where the day file says nothing. */
  readonly setting: Setting;
}

/** A station nobody has said the kind of is counted as a table. */
const PLAIN: StationKind = 'table-activity';

const kindOf = (written: string | undefined): StationKind =>
  STATION_KINDS.find((kind) => kind === written) ?? PLAIN;

/** Where the day is: what is asked for, unless the file says. */
export const daySetting = (day: Pick<Day, 'setting'>, otherwise: Setting): Setting =>
  SETTINGS.find((setting) => setting === day.setting) ?? otherwise;

/** Stations whose kind the day file leaves out. */
export const plainStations = (day: Day): readonly string[] =>
  day.stations.flatMap(({ name, kind }) => (kind === undefined ? [name] : []));

function partOf(
  rules: SafetyRules,
  day: Day,
  doing: Exclude<Doing, { readonly kind: 'away' }>,
  groups: readonly number[],
  asked: DayAsked,
): MomentPart {
  const here = groups.flatMap((group) => day.groups[group] ?? []);
  const children = here.reduce((sum, { pupils }) => sum + pupils, 0);
  const youngest = Math.min(...here.map(({ youngestYears }) => youngestYears));
  const station = doing.kind === 'station' ? day.stations[doing.station] : undefined;
  const kind =
    doing.kind === 'lunch' ? 'food-break' : doing.kind === 'station' ? kindOf(station?.kind) : null;
  const group = {
    ...plainSituation(children, youngest, asked.frameworks, daySetting(day, asked.setting)),
    localChildrenPerAdult: asked.localChildrenPerAdult,
  };
  const stations = kind === null ? [] : [{ kind, childrenAtOnce: children }];
  return {
    groups: here.map(({ name }) => name),
    children,
    youngest,
    station: station?.name ?? null,
    kind: kind === null ? null : stationRule(rules, kind).id,
    report: safetyReport(rules, { ...group, stations }),
  };
}

/**
 * The adults each slot of a planned day asks for. Groups at different stations are apart, each with its own youngest child,
 * and are added; groups at one station are one group (clause S1 of the rules, ASM). Lunch counts as a food break; a slot
 * with nothing on by the ratio alone.
 *
 * @param plan A finished timetable of that day.
 */
export function dayMoments(
  rules: SafetyRules,
  day: Day,
  plan: DayPlan,
  asked: DayAsked,
): readonly DayMoment[] {
  return day.slots.map((_, slot) => {
    const together = new Map<string, { doing: Exclude<Doing, { kind: 'away' }>; groups: number[] }>();
    for (const [group, row] of plan.groups.entries()) {
      const doing = row[slot];
      if (doing === undefined || doing.kind === 'away') continue;
      const key =
        doing.kind === 'station'
          ? `station ${doing.station}`
          : doing.kind === 'lunch'
            ? 'lunch'
            : `free ${group}`;
      const place = together.get(key) ?? { doing, groups: [] };
      place.groups.push(group);
      together.set(key, place);
    }
    const parts = [...together.values()].map(({ doing, groups }) => partOf(rules, day, doing, groups, asked));
    const sum = (count: (part: MomentPart) => number): number =>
      parts.reduce((total, part) => total + count(part), 0);
    return {
      slot,
      parts,
      supervisors: sum(({ report }) => report.adults.supervisors),
      practitioners: sum(({ report }) => report.adults.practitioners),
      totalAdults: sum(({ report }) => report.adults.totalAdults),
      eyeSetsNeeded: sum(({ report }) => report.adults.eyeSetsNeeded),
    };
  });
}

/** The slot that asks for most adults, the first of them where several do; null for a day without slots. */
export const strictestMoment = (moments: readonly DayMoment[]): DayMoment | null =>
  moments.reduce<DayMoment | null>(
    (most, moment) => (most === null || moment.totalAdults > most.totalAdults ? moment : most),
    null,
  );
