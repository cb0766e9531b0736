import type { Day, DayFixed } from '../day/index.ts';
import { nearest } from '../lesson/nearest.ts';
import { hasErrors, type Fault, type Path } from '../lesson/problem.ts';
import { dayProblems } from '../words/en/day-problems.ts';
import { shapeWords } from '../words/en/problems.ts';
import { dayFile, type DayParts } from './day-file.ts';
import { walkFaults, walkMatrix } from './day-walks.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';

const MOST = { groups: 24, stations: 24, adults: 40 } as const;

/** Minutes after midnight; the schema has seen to its form. */
const minuteOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));

const unfit = (path: Path, words: Pick<Fault, 'expected' | 'received' | 'mend'>): Fault => ({
  code: 'value-unfit',
  grade: 'error',
  path,
  ...words,
});

function unknownWords(words: readonly string[], known: readonly string[], path: Path): readonly Fault[] {
  return words.flatMap((word, index): readonly Fault[] => {
    if (known.includes(word)) return [];
    const near = nearest(word, known);
    return [
      {
        code: 'word-unknown',
        grade: 'error',
        path: [...path, index],
        ...shapeWords.unknownWord(word, near, known),
        ...(near === null ? {} : { replacement: near }),
      },
    ];
  });
}

function timeFaults({ slots, groups }: DayParts): readonly Fault[] {
  const wrongSlots = slots.flatMap(({ from, to }, index): readonly Fault[] => {
    const before = slots[index - 1]?.to;
    if (minuteOf(to) <= minuteOf(from)) return [unfit(['slots', index, 'to'], dayProblems.after(from, to))];
    return before !== undefined && minuteOf(from) < minuteOf(before)
      ? [unfit(['slots', index, 'from'], dayProblems.notBefore(before, from))]
      : [];
  });
  const wrongGroups = Object.entries(groups).flatMap(([key, { arrives, leaves }]): readonly Fault[] =>
    minuteOf(leaves) <= minuteOf(arrives)
      ? [unfit(['groups', key, 'leaves'], dayProblems.after(arrives, leaves))]
      : [],
  );
  return [...wrongSlots, ...wrongGroups];
}

/** What a group may be fixed to beside a station. */
const NOT_STATIONS = ['lunch', 'free'] as const;

/** Faults of one word of one thing that is fixed. */
const ofFixed = (key: 'group' | 'at', index: number, faults: readonly Fault[]): readonly Fault[] =>
  faults.map((fault) => ({ ...fault, path: ['fixed', index, key] }));

function nameFaults(said: DayParts): readonly Fault[] {
  const stations = Object.keys(said.stations);
  const numbers = (list: readonly number[] | undefined, path: Path): readonly Fault[] =>
    (list ?? []).flatMap((slot, index) =>
      slot > said.slots.length ? [unfit([...path, index], dayProblems.noSlot(said.slots.length, slot))] : [],
    );
  const tooMany = (['groups', 'stations', 'adults'] as const).flatMap((key): readonly Fault[] => {
    const has = Object.keys(said[key] ?? {}).length;
    const least = key === 'adults' ? 0 : 1;
    return has > MOST[key] || has < least ? [unfit([key], dayProblems.outside(least, MOST[key], has))] : [];
  });
  return [
    ...tooMany,
    ...unknownWords(said['must-see'] ?? [], stations, ['must-see']),
    ...(said.fixed ?? []).flatMap(({ group, slot, at }, index) => [
      ...ofFixed('group', index, unknownWords([group], Object.keys(said.groups), [])),
      ...ofFixed('at', index, unknownWords([at], [...stations, ...NOT_STATIONS], [])),
      ...numbers([slot], []).map((fault) => ({ ...fault, path: ['fixed', index, 'slot'] })),
    ]),
    ...Object.entries(said.groups).flatMap(([key, group]) =>
      unknownWords(group['must-see'] ?? [], stations, ['groups', key, 'must-see']),
    ),
    ...numbers(said.lunch?.slots, ['lunch', 'slots']),
    ...Object.entries(said.stations).flatMap(([key, { shut }]) => numbers(shut, ['stations', key, 'shut'])),
    ...Object.entries(said.adults ?? {}).flatMap(([key, { free }]) => numbers(free, ['adults', key, 'free'])),
  ];
}

/** Keys that a day has and a site has not. */
const DAY_KEYS = /^(?:slots|stations|walking|lunch)[ \t]*:/m;

/**
 * True for a YAML file that is meant as a day: it lies in a folder `days`, or says its bells or stations.
 *
 * @example isDayFile('content/days/a.yaml', '') // true
 */
export const isDayFile = (file: string, text: string): boolean =>
  /(?:^|[\\/])days[\\/][^\\/]*$/.test(file) || DAY_KEYS.test(text);

/** Reads a day file: groups, stations, adults and bells. Every problem has its line and column. */
export function readDay(file: string, text: string): ReadFile<Day> {
  const read = readYamlFile(file, text, dayFile);
  if (read.value === null) return { ...read, value: null };
  const said = read.value;
  const stations = Object.entries(said.stations);
  const places = [
    ...new Set([
      ...(said.gate === undefined ? [] : [said.gate]),
      ...stations.map(([, { place }]) => place),
      ...(said.lunch === undefined ? [] : [said.lunch.place]),
    ]),
  ];
  const walkMinutes = walkMatrix(places, said.walking ?? []);
  const faults = [
    ...timeFaults(said),
    ...nameFaults(said),
    ...walkFaults(places, walkMinutes, said.walking ?? []),
  ];
  const problems = [...read.problems, ...read.place(faults)];
  if (hasErrors(faults)) return { ...read, value: null, problems };
  const fromOne = (slots: readonly number[] | undefined): readonly number[] =>
    (slots ?? []).map((slot) => slot - 1);
  const value: Day = {
    title: said.title,
    date: said.date ?? null,
    slots: said.slots.map(({ from, to }) => ({ fromMinute: minuteOf(from), toMinute: minuteOf(to) })),
    groups: Object.entries(said.groups).map(([key, group]) => ({
      id: key,
      name: group.name,
      pupils: group.pupils,
      youngestYears: Number(group.ages.split('-')[0]),
      arrivesMinute: minuteOf(group.arrives),
      leavesMinute: minuteOf(group.leaves),
      mustSee: group['must-see'] ?? said['must-see'] ?? [],
      hasLunch: group.lunch ?? said.lunch !== undefined,
    })),
    stations: stations.map(([key, station]) => ({
      id: key,
      name: station.name,
      place: station.place,
      pupilsAtOnce: station.pupils,
      groupsAtOnce: station.groups ?? 1,
      shutSlots: fromOne(station.shut),
      isOpenWhenWet: station.wet !== 'shut',
      fromYears: station['from-age'] ?? 0,
      adults: station.adults ?? 1,
      skill: station.skill ?? null,
      ...(station.kind === undefined ? {} : { kind: station.kind }),
      kit: station.kit ?? [],
      sheetsEach: station.sheets ?? 0,
    })),
    adults: Object.entries(said.adults ?? {}).map(([key, adult]) => ({
      id: key,
      role: adult.role,
      skills: adult.skills ?? [],
      freeSlots: adult.free === undefined ? [...said.slots.keys()] : fromOne(adult.free),
      mostInARow: adult['most-in-a-row'] ?? null,
      hasLunch: adult.lunch ?? false,
    })),
    lunch:
      said.lunch === undefined
        ? null
        : { slots: fromOne(said.lunch.slots), places: said.lunch.places, place: said.lunch.place },
    fixed: (said.fixed ?? []).map(({ group, slot, at }): DayFixed => {
      const station = stations.findIndex(([key]) => key === at);
      const there: DayFixed['at'] =
        station >= 0 ? { kind: 'station', station } : { kind: at === 'lunch' ? 'lunch' : 'free' };
      return { group: Object.keys(said.groups).indexOf(group), slot: slot - 1, at: there };
    }),
    gate: said.gate ?? null,
    ...(said.setting === undefined ? {} : { setting: said.setting }),
    places,
    walkMinutes,
    mayWalkLate: said['late-walks'] ?? false,
  };
  return { ...read, value, problems };
}
