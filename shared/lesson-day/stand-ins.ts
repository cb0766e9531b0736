import type { Band } from '../library/bands.ts';
import type { DayParts } from '../library/day-file.ts';
import type { StationKind } from '../safety/index.ts';
import { lessonDayWords as words } from '../words/en/lesson-day.ts';
import type { LessonStation } from './lesson-stations.ts';

/** A school day: the first bell, when the last slot has ended, and the time to walk between two. ASM. */
const FIRST_BELL = 9 * 60 + 30;
const DAY_ENDS = 15 * 60;
const BETWEEN_MINUTES = 5;
const BEFORE_MINUTES = 10;
/** A slot where the lesson says no minutes at all, and a walk between two places. ASM. */
const SLOT_MINUTES = 20;
const WALK_MINUTES = 2;
/** A day file holds no more of each. */
const MOST_SLOTS = 24;
const MOST_GROUPS = 24;
const MOST_ADULTS = 40;

const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

/** Where a station may stand until somebody says. */
const PLACES: Readonly<Record<StationKind, 'tables' | 'rope' | 'trench' | 'digBox'>> = {
  'knapping-demo': 'rope',
  'wet-grinding-demo': 'rope',
  'hafting-demo': 'rope',
  'pitch-fire-demo': 'rope',
  'sharp-handling': 'tables',
  'blunt-handling': 'tables',
  'animal-materials': 'tables',
  pigment: 'tables',
  'mock-dig': 'digBox',
  'site-tour': 'trench',
  'table-activity': 'tables',
  'food-break': 'tables',
};

/** @example standInPlace('knapping-demo') // 'roped ground' */
export const standInPlace = (kind: StationKind): string => words.places[PLACES[kind]];

/** Walks from the first place to each other. */
export function standInWalks(stations: readonly LessonStation[]): NonNullable<DayParts['walking']> {
  const [first, ...others] = [...new Set(stations.map(({ rule }) => standInPlace(rule.id)))];
  return first === undefined ? [] : others.map((to) => ({ from: first, to, minutes: WALK_MINUTES }));
}

/**
 * Ages in whole years, of bands that name the first age and the one after the last.
 *
 * @example agesInYears(['7-9', '9-11']) // '7-10'
 */
export function agesInYears(bands: readonly Band[]): string {
  const ends = bands.map((band) => band.split('-').map(Number));
  const from = Math.min(...ends.map(([low]) => low ?? 0));
  const to = Math.max(...ends.map(([, high]) => high ?? 0)) - 1;
  return from === to ? String(from) : `${from}-${to}`;
}

/** Bells and groups to be written over. */
export interface StandIns {
  readonly slots: DayParts['slots'];
  readonly groups: DayParts['groups'];
  /** Fewer slots fit in a school day than every group needs to meet every station. */
  readonly isTooShort: boolean;
  readonly slotMinutes: number;
}

/**
 * As many groups as there are stations, more where a station holds fewer; as many slots as each group needs, as far as a
 * school day goes; each slot as long as the longest activity.
 */
export function standIns(
  stations: readonly LessonStation[],
  bands: readonly Band[],
  pupils: number,
): StandIns {
  const slotMinutes = Math.max(0, ...stations.map(({ minutes }) => minutes ?? 0)) || SLOT_MINUTES;
  const smallest = Math.min(...stations.map(({ pupilsAtOnce }) => pupilsAtOnce));
  const wanted = Math.max(stations.length, Math.ceil(pupils / smallest));
  const groupCount = Math.min(MOST_GROUPS, pupils, wanted);
  const step = slotMinutes + BETWEEN_MINUTES;
  const fitting = Math.max(1, Math.floor((DAY_ENDS - FIRST_BELL + BETWEEN_MINUTES) / step));
  const needed = Math.max(stations.length, groupCount);
  const slots = Array.from({ length: Math.min(needed, fitting, MOST_SLOTS) }, (_, slot) => {
    const from = FIRST_BELL + slot * step;
    return { from: clock(from), to: clock(from + slotMinutes) };
  });
  const ages = agesInYears(bands);
  const groups = Array.from({ length: groupCount }, (_, index) => [
    words.groupId(index + 1),
    {
      name: words.groupName(index + 1),
      pupils: Math.floor((pupils + groupCount - 1 - index) / groupCount),
      ages,
      arrives: clock(FIRST_BELL - BEFORE_MINUTES),
      leaves: slots.at(-1)?.to ?? clock(DAY_ENDS),
    },
  ]);
  return {
    slots,
    groups: Object.fromEntries(groups),
    isTooShort: slots.length < needed,
    slotMinutes,
  };
}

/** What a practitioner of a station must be able to do. */
export const skillOf = ({ rule }: Pick<LessonStation, 'rule'>): string | null =>
  rule.practitioners > 0 ? rule.id.replace(/-demo$/, '').replaceAll('-', ' ') : null;

/** Enough adults for all stations to run at once; null where a day file cannot name so many. */
export function standInAdults(stations: readonly LessonStation[]): NonNullable<DayParts['adults']> | null {
  const practitioners = stations.flatMap((station) => {
    const skill = skillOf(station);
    return skill === null
      ? []
      : Array.from({ length: station.rule.practitioners }, () => ({ station, skill }));
  });
  const all = stations.reduce((sum, { adults }) => sum + adults, 0);
  const helpers = Math.max(0, all - practitioners.length);
  if (practitioners.length + helpers > MOST_ADULTS) return null;
  return Object.fromEntries([
    ...practitioners.map(({ station, skill }, index) => [
      words.practitionerId(index + 1),
      { role: words.practitionerRole(station.name), skills: [skill] },
    ]),
    ...Array.from({ length: helpers }, (_, index) => [
      words.helperId(index + 1),
      { role: words.helperRole(index + 1) },
    ]),
  ]);
}
