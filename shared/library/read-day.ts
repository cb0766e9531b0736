import * as z from 'zod';
import type { Day } from '../day/index.ts';
import { nearest } from '../lesson/nearest.ts';
import type { Fault, Path } from '../lesson/problem.ts';
import { SETTINGS, STATION_KINDS } from '../safety/index.ts';
import { dayProblems } from '../words/en/day-problems.ts';
import { shapeWords } from '../words/en/problems.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time such as "09:30"');
const id = z.string().regex(/^[a-z][a-z0-9-]*$/, 'small letters, digits and hyphens');
const slotNumber = z.int().min(1).max(24);
const count = z.int().min(1).max(1000);

/** A day as a lead writes it. Slots are numbered from 1, in the order of the bells. */
const dayFile = z.strictObject({
  title: z.string(),
  status: z.enum(STATUSES),
  note: z.string().optional(),
  date: z
    .string()
    .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, 'a date such as "2027-06-10"')
    .optional(),
  slots: z
    .array(z.strictObject({ from: clock, to: clock }))
    .min(1)
    .max(24),
  lunch: z.strictObject({ slots: z.array(slotNumber).min(1), places: count, place: z.string() }).optional(),
  gate: z.string().optional(),
  setting: z.enum(SETTINGS).optional(),
  walking: z
    .array(z.strictObject({ from: z.string(), to: z.string(), minutes: z.int().min(0).max(120) }))
    .optional(),
  'must-see': z.array(z.string()).optional(),
  groups: z.record(
    id,
    z.strictObject({
      name: z.string(),
      pupils: count,
      ages: z.string().regex(/^\d{1,2}(-\d{1,2})?$/, 'ages such as "7-9"'),
      arrives: clock,
      leaves: clock,
      'must-see': z.array(z.string()).optional(),
      lunch: z.boolean().optional(),
    }),
  ),
  stations: z.record(
    id,
    z.strictObject({
      name: z.string(),
      place: z.string(),
      pupils: count,
      groups: z.int().min(1).max(24).optional(),
      shut: z.array(slotNumber).optional(),
      wet: z.enum(['open', 'shut']).optional(),
      'from-age': z.int().min(0).max(18).optional(),
      adults: z.int().min(0).max(12).optional(),
      skill: z.string().optional(),
      kind: z.enum(STATION_KINDS).optional(),
    }),
  ),
  adults: z
    .record(
      id,
      z.strictObject({
        role: z.string(),
        skills: z.array(z.string()).optional(),
        free: z.array(slotNumber).optional(),
        'most-in-a-row': z.int().min(1).max(24).optional(),
        lunch: z.boolean().optional(),
      }),
    )
    .optional(),
});

type DayParts = z.output<typeof dayFile>;

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
    ...Object.entries(said.groups).flatMap(([key, group]) =>
      unknownWords(group['must-see'] ?? [], stations, ['groups', key, 'must-see']),
    ),
    ...numbers(said.lunch?.slots, ['lunch', 'slots']),
    ...Object.entries(said.stations).flatMap(([key, { shut }]) => numbers(shut, ['stations', key, 'shut'])),
    ...Object.entries(said.adults ?? {}).flatMap(([key, { free }]) => numbers(free, ['adults', key, 'free'])),
  ];
}

/** Shortest minutes between every two places, by way of others where that is shorter. Source: Floyd 1962 (FM). */
function walks(places: readonly string[], walking: DayParts['walking']): number[][] {
  const minutes = places.map((_, from) =>
    places.map((__, to) => (from === to ? 0 : Number.POSITIVE_INFINITY)),
  );
  const lower = (from: number, to: number, value: number): void => {
    const row = minutes[from];
    if (row !== undefined && value < (row[to] ?? 0)) row[to] = value;
  };
  for (const walk of walking ?? []) {
    const [from, to] = [places.indexOf(walk.from), places.indexOf(walk.to)];
    lower(from, to, walk.minutes);
    lower(to, from, walk.minutes);
  }
  const between = (from: number, to: number): number => minutes[from]?.[to] ?? 0;
  for (const by of places.keys())
    for (const from of places.keys())
      for (const to of places.keys()) lower(from, to, between(from, by) + between(by, to));
  return minutes;
}

function placeFaults(places: readonly string[], minutes: readonly (readonly number[])[], said: DayParts) {
  const strange = (said.walking ?? []).flatMap(({ from, to }, index) => [
    ...unknownWords([from], places, ['walking', index]).map((fault) => ({
      ...fault,
      path: ['walking', index, 'from'],
    })),
    ...unknownWords([to], places, ['walking', index]).map((fault) => ({
      ...fault,
      path: ['walking', index, 'to'],
    })),
  ]);
  const lost = places.find((_, to) => minutes[0]?.[to] === Number.POSITIVE_INFINITY);
  return lost === undefined
    ? strange
    : [...strange, unfit(['walking'], dayProblems.noWay(places[0] ?? '', lost))];
}

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
  const walkMinutes = walks(places, said.walking);
  const faults = [...timeFaults(said), ...nameFaults(said), ...placeFaults(places, walkMinutes, said)];
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
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
    gate: said.gate ?? null,
    ...(said.setting === undefined ? {} : { setting: said.setting }),
    places,
    walkMinutes,
  };
  return { ...read, value };
}
