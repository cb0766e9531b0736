import type { Day } from './day.ts';
import type { Settled } from './day-programme.ts';
import { ruleKey, rulesOf, type DayRule } from './rules.ts';
import { crewRows } from './crew-rows.ts';
import { programme, type Programme } from './programme.ts';
import { routeStates, type RouteStates, type Step } from './route-states.ts';

/** What is made least by routes. */
export type RouteAim = 'idle' | 'uneven' | 'walking';

/** Groups that may go the same ways, and those ways. */
interface RouteClass {
  readonly groups: readonly number[];
  readonly states: RouteStates;
}

/** Groups gone through place by place, all together: the least walking as a programme, and how to read it. */
export interface RouteProgramme {
  readonly text: string;
  /** By group, then by slot. */
  readonly read: (values: Readonly<Record<string, number>>) => readonly (readonly Step[])[];
}

const MOST_STEPS = 80_000;

/** What two groups must share to be told apart by nothing but their names. */
const likeness = (day: Day, group: number): string => {
  const who = day.groups[group];
  const fits = day.stations.filter(
    ({ pupilsAtOnce, fromYears }) =>
      who !== undefined && who.pupils <= pupilsAtOnce && who.youngestYears >= fromYears,
  );
  return JSON.stringify([
    day.slots.map(
      (bells) =>
        who !== undefined && who.arrivesMinute <= bells.fromMinute && bells.toMinute <= who.leavesMinute,
    ),
    who?.mustSee.toSorted(),
    who?.hasLunch,
    fits.map(({ id }) => id),
    day.fixed.filter((said) => said.group === group).map(({ slot, at }) => [slot, at]),
  ]);
};

/** How long one group can have nothing on, from what is settled for all of them together. */
function idleOf(
  day: Day,
  group: number,
  { idleEach, idleMinutes, unevenMinutes, leastIdleMinutes = 0 }: Settled,
): readonly [number, number] {
  const each = idleEach?.[group];
  if (each !== undefined) return [each, each];
  if (idleMinutes === undefined) return [0, Number.POSITIVE_INFINITY];
  if (unevenMinutes === undefined) return [0, idleMinutes];
  // Who waits longest waits no longer than the mean and what there may be between groups; who waits least, likewise.
  const groups = Math.max(1, day.groups.length);
  return [Math.max(0, leastIdleMinutes / groups - unevenMinutes), idleMinutes / groups + unevenMinutes];
}

function classesOf(day: Day, settled: Settled): readonly RouteClass[] | null {
  const alike = new Map<string, number[]>();
  for (const group of day.groups.keys()) {
    const key = likeness(day, group);
    alike.set(key, [...(alike.get(key) ?? []), group]);
  }
  const classes: RouteClass[] = [];
  let steps = 0;
  for (const groups of alike.values()) {
    const group = groups[0] ?? 0;
    const idle = idleOf(day, group, settled);
    const states = routeStates(day, { group, idle, isWalkInTime: !day.mayWalkLate });
    if (states === null) return null;
    steps += states.arcs.length;
    if (steps > MOST_STEPS) return null;
    classes.push({ groups, states });
  }
  return classes;
}

/**
 * One aim for all groups together, where places are told apart and the stations of a place are not.
 * Groups that may go the same ways are counted, not named, so the solver meets no two plans that differ by names alone.
 * What it leaves out (which station of a place) can only add minutes: no plan does better. Null where there are too many
 * ways to write down.
 *
 * Source of the form: a flow through states, as in dynamic programming (DER).
 */
export function routeProgramme(day: Day, aim: RouteAim, settled: Settled): RouteProgramme | null {
  const classes = classesOf(day, settled);
  if (classes === null) return null;
  const into = programme();
  const cost: string[] = [];
  const ends: { readonly name: string; readonly idleMinutes: number }[] = [];
  const idle: string[] = [];
  const nameOf = (index: number, arc: number): string => `a_${index}_${arc}`;
  /** Terms of the steps to a place in a slot. */
  const at = new Map<string, { readonly name: string; readonly pupils: number }[]>();
  for (const [index, { groups, states }] of classes.entries()) {
    const pupils = Math.min(...groups.map((group) => day.groups[group]?.pupils ?? 0));
    const flow = new Map<number, string[]>([
      [0, []],
      [states.end, []],
    ]);
    for (const [number, arc] of states.arcs.entries()) {
      const name = into.whole(nameOf(index, number), groups.length);
      flow.set(arc.from, [...(flow.get(arc.from) ?? []), `- 1 ${name}`]);
      flow.set(arc.to, [...(flow.get(arc.to) ?? []), `+ 1 ${name}`]);
      if (arc.walkMinutes > 0) cost.push(`+ ${arc.walkMinutes} ${name}`);
      if (arc.to === states.end) ends.push({ name, idleMinutes: arc.idleMinutes });
      const bells = day.slots[arc.slot];
      if (arc.kind === 'free' && bells !== undefined)
        idle.push(`+ ${bells.toMinute - bells.fromMinute} ${name}`);
      if (arc.kind === 'visit' || arc.kind === 'lunch') {
        const key = `${arc.kind}/${arc.place}/${arc.slot}`;
        at.set(key, [...(at.get(key) ?? []), { name, pupils }]);
      }
    }
    for (const [state, terms] of flow) {
      const out = state === 0 ? -groups.length : state === states.end ? groups.length : 0;
      into.row(terms, `= ${out}`);
    }
  }
  if (settled.idleMinutes !== undefined && idle.length > 0) into.row(idle, `<= ${settled.idleMinutes}`);
  if (aim === 'uneven') unevenRows(day, ends, into);
  placeRows(day, at, into.row);
  crewedRows(day, at, into);
  return {
    text: into.text(aim === 'idle' ? idle : aim === 'walking' ? cost : ['+ 1 most', '- 1 least']),
    read: (values) => {
      const rows: (readonly Step[])[] = day.groups.map(() => []);
      for (const [index, { groups, states }] of classes.entries()) {
        const left = states.arcs.map((_, arc) => Math.round(values[nameOf(index, arc)] ?? 0));
        for (const group of groups) rows[group] = takeRoute(states, left, day.slots.length);
      }
      return rows;
    },
  };
}

/** `most` and `least` are the idle minutes of the groups that have most and least. */
function unevenRows(
  { groups }: Day,
  ends: readonly { readonly name: string; readonly idleMinutes: number }[],
  into: Programme,
): void {
  const longest = Math.max(0, ...ends.map(({ idleMinutes }) => idleMinutes));
  for (const idleMinutes of new Set(ends.map((end) => end.idleMinutes))) {
    const is = into.yesNo(`i_${idleMinutes}`);
    const here = ends.filter((end) => end.idleMinutes === idleMinutes).map(({ name }) => `+ 1 ${name}`);
    into.row([...here, `- ${groups.length} ${is}`], '<= 0');
    into.row(['+ 1 most', `- ${idleMinutes} ${is}`], '>= 0');
    into.row(['+ 1 least', `+ ${longest - idleMinutes} ${is}`], `<= ${longest}`);
  }
}

/** Takes one group's way out of what is left of the flow. */
function takeRoute({ arcs }: RouteStates, left: number[], slots: number): readonly Step[] {
  const steps: Step[] = [];
  let state = 0;
  while (steps.length <= slots) {
    const number = arcs.findIndex((arc, index) => arc.from === state && (left[index] ?? 0) > 0);
    const arc = arcs[number];
    if (arc === undefined) break;
    left[number] = (left[number] ?? 0) - 1;
    steps.push(arc);
    state = arc.to;
  }
  return steps.slice(0, slots);
}

type StepsAt = ReadonlyMap<string, readonly { readonly name: string; readonly pupils: number }[]>;

/** Each adult at a station in each slot, by all rules of adults; a place takes only as many groups as its crews do. */
function crewedRows(day: Day, at: StepsAt, into: Programme): void {
  const rules = new Set(rulesOf(day).map(ruleKey));
  const keeps = (rule: DayRule): boolean => rules.has(ruleKey(rule));
  const noColumn = (): null => null;
  crewRows(day, keeps, { visit: noColumn, lunch: noColumn }, into, { isCounted: false });
  const isCrewed = (station: number): boolean =>
    keeps({ kind: 'crew', station }) || keeps({ kind: 'skill', station });
  for (const [station, { groupsAtOnce, shutSlots, id }] of day.stations.entries()) {
    if (!isCrewed(station)) continue;
    const open = [...day.slots.keys()].filter((slot) => !shutSlots.includes(slot));
    const wanted = day.groups.filter(({ mustSee }) => mustSee.includes(id)).length;
    if (open.length > 0)
      into.row(
        open.map((slot) => `+ ${groupsAtOnce} u_${station}_${slot}`),
        `>= ${wanted}`,
      );
  }
  for (const [place, name] of day.places.entries()) {
    for (const slot of day.slots.keys()) {
      const steps = at.get(`visit/${place}/${slot}`) ?? [];
      const here = [...day.stations.entries()].filter(
        ([, station]) => station.place === name && !station.shutSlots.includes(slot),
      );
      if (steps.length === 0 || !here.some(([station]) => isCrewed(station))) continue;
      const staffed = here.filter(([station]) => isCrewed(station));
      const others = here
        .filter(([station]) => !isCrewed(station))
        .reduce((sum, [, each]) => sum + each.groupsAtOnce, 0);
      into.row(
        [
          ...steps.map((step) => `+ 1 ${step.name}`),
          ...staffed.map(([station, each]) => `- ${each.groupsAtOnce} u_${station}_${slot}`),
        ],
        `<= ${others}`,
      );
    }
  }
}

/** What a place takes at once: groups, pupils, seats, and adults of the day. */
function placeRows(day: Day, at: StepsAt, row: (terms: readonly string[], relation: string) => void): void {
  for (const slot of day.slots.keys()) {
    const adults: string[] = [];
    for (const [place, name] of day.places.entries()) {
      const here = day.stations.filter(({ place, shutSlots }) => place === name && !shutSlots.includes(slot));
      const steps = at.get(`visit/${place}/${slot}`) ?? [];
      if (steps.length === 0) continue;
      const groups = here.reduce((sum, { groupsAtOnce }) => sum + groupsAtOnce, 0);
      const pupils = here.reduce((sum, { pupilsAtOnce }) => sum + pupilsAtOnce, 0);
      row(
        steps.map((step) => `+ 1 ${step.name}`),
        `<= ${groups}`,
      );
      row(
        steps.map((step) => `+ ${step.pupils} ${step.name}`),
        `<= ${pupils}`,
      );
      // The fewest adults that one visit at this place takes.
      const share = Math.min(
        ...here.map(
          (station) => Math.max(station.adults, station.skill === null ? 0 : 1) / station.groupsAtOnce,
        ),
      );
      if (share > 0) adults.push(...steps.map((step) => `+ ${share} ${step.name}`));
    }
    const eating = [...at]
      .filter(([key]) => key.startsWith('lunch/') && key.endsWith(`/${slot}`))
      .flatMap(([, steps]) => steps);
    if (eating.length > 0)
      row(
        eating.map((step) => `+ ${step.pupils} ${step.name}`),
        `<= ${day.lunch?.places ?? 0}`,
      );
    const free = day.adults.filter(({ freeSlots }) => freeSlots.includes(slot)).length;
    if (day.adults.length > 0 && adults.length > 0) row(adults, `<= ${free}`);
  }
}
