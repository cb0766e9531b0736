import { lessonSetting, type Plan } from '../compile/index.ts';
import type { DayParts } from '../library/day-file.ts';
import { writeDay } from '../library/write-day.ts';
import type { SafetyRules } from '../safety/index.ts';
import { lessonDayWords as words } from '../words/en/lesson-day.ts';
import { lessonStations, type LessonStation } from './lesson-stations.ts';
import { agesInYears, skillOf, standInAdults, standInPlace, standIns, standInWalks } from './stand-ins.ts';

/** What is asked besides the lesson itself. */
export interface LessonDayAsked {
  /** The lesson file's name. */
  readonly file: string;
  /** Pupils of the whole day, shared out among its groups. */
  readonly pupils: number;
  /** Titles of days that are there already. */
  readonly taken: readonly string[];
}

/** A day made from a lesson. */
export interface LessonDay {
  readonly title: string;
  /** The day file; null where nothing of the lesson can be a station. */
  readonly text: string | null;
  /** What of the lesson is not in it and why, a sentence each. */
  readonly leftOut: readonly string[];
}

function freeTitle(title: string, taken: readonly string[]): string {
  if (!taken.includes(title)) return title;
  let number = 2;
  while (taken.includes(words.titleAgain(title, number))) number += 1;
  return words.titleAgain(title, number);
}

type Stations = DayParts['stations'];

function stationEntry(station: LessonStation): Stations[string] {
  const { name, rule, pupilsAtOnce, adults, work, kit, sheetsEach } = station;
  const skill = skillOf(station);
  return {
    name,
    kind: rule.id,
    place: standInPlace(rule.id),
    pupils: pupilsAtOnce,
    adults,
    ...(skill === null ? {} : { skill }),
    ...(Object.keys(work).length === 0 ? {} : { work }),
    ...(kit.length === 0 ? {} : { kit: [...kit] }),
    ...(sheetsEach === 0 ? {} : { sheets: sheetsEach }),
  };
}

const byId = <Value>(
  stations: readonly LessonStation[],
  of: (station: LessonStation) => Value,
): Readonly<Record<string, Value>> =>
  Object.fromEntries(stations.map((station) => [station.id, of(station)]));

/**
 * A day file made from a lesson's plan: its stations, their minutes, ages and work as the lesson says, all else stand-ins that
 * the file's comments call so. Pure: the same plan gives the same bytes.
 *
 * @example lessonDay(library.safety, plan, { file: 'a.md', pupils: 30, taken: [] }).text // '# Made from the lesson …'
 */
export function lessonDay(
  rules: SafetyRules,
  plan: Plan,
  { file, pupils, taken }: LessonDayAsked,
): LessonDay {
  const lesson = plan.title.replace(/\s+/g, ' ').trim();
  const title = freeTitle(words.title(lesson), taken);
  const { stations, leftOut } = lessonStations(rules, plan);
  if (stations.length === 0) return { title, text: null, leftOut: [words.noStation(lesson), ...leftOut] };
  const { slots, groups, isTooShort, slotMinutes } = standIns(stations, plan.bands, pupils);
  const walking = standInWalks(stations);
  const adults = standInAdults(stations);
  const short = isTooShort ? [words.noteShort(slots.length)] : [];
  const parts: DayParts = {
    title,
    status: 'ASM',
    note: [words.note(lesson), ...short, ...leftOut].join(' '),
    slots,
    setting: lessonSetting(plan),
    ...(walking.length === 0 ? {} : { walking }),
    'must-see': stations.map(({ id }) => id),
    groups,
    stations: byId(stations, stationEntry),
    ...(adults === null ? {} : { adults }),
  };
  const text = writeDay(parts, {
    head: [...words.made(lesson, file), ...leftOut],
    above: {
      slots: [
        ...words.slots(
          slotMinutes,
          stations.some(({ minutes }) => minutes !== null),
        ),
        ...short,
      ],
      walking: [words.walking],
      groups: words.groups(agesInYears(plan.bands)),
      stations: [...words.stations, ...(adults === null ? [words.noAdults] : [])],
      adults: words.adults,
    },
    behind: {
      stations: byId(stations, ({ minutes, isOfStrictest }) => words.stationBehind(minutes, isOfStrictest)),
    },
    after: { setting: words.setting(plan.visit !== undefined), 'must-see': words.mustSee },
  });
  return { title, text, leftOut };
}
