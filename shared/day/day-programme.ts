import { isThere, slotMinutes, type Day } from './day.ts';
import { columnsOf, type Columns, type Keeps } from './columns.ts';
import { crewRows } from './crew-rows.ts';
import { fixedRows, movedRows, pastRows, type InHand } from './in-hand.ts';
import type { DayPlan } from './plan.ts';
import { programme, sum, type Programme } from './programme.ts';
import type { Step } from './route-states.ts';
import { ruleKey, rulesOf, type DayRule } from './rules.ts';
import { walkRows } from './walk-rows.ts';

/**
 * What is made least: nothing (is there a plan at all?), must-sees missed, or those of a finished plan in order; `moved` is
 * what differs from a plan in hand; `changes` is the stations each adult serves, with the groups' timetable settled.
 */
export type Aim = 'any' | 'missed' | 'moved' | 'idle' | 'uneven' | 'walking' | 'changes';

/** What earlier aims have settled: the most of each that a later one may use. Minutes. */
export interface Settled {
  readonly idleMinutes?: number;
  /** No plan has less with nothing on. */
  readonly leastIdleMinutes?: number;
  readonly unevenMinutes?: number;
  /** What each group has nothing on, to the minute. */
  readonly idleEach?: readonly number[];
  readonly movedCells?: number;
  /** The place each group is at in each slot, by route. */
  readonly routes?: readonly (readonly Step[])[];
  /** No plan walks less. */
  readonly leastWalking?: number;
  readonly inHand?: InHand;
  /** What each group does when, where only the adults are still to be placed. */
  readonly groups?: DayPlan['groups'];
}

function groupRows(day: Day, keeps: Keeps, columns: Columns, into: Programme, isSoft: boolean): string[] {
  const missed: string[] = [];
  const slots = [...day.slots.keys()];
  for (const group of day.groups.keys()) {
    for (const slot of slots) {
      const visits = [...day.stations.keys()].map((station) => columns.visit(group, station, slot));
      into.row(sum([...visits, columns.lunch(group, slot)]), '<= 1');
    }
    for (const station of day.stations.keys()) {
      const visits = sum(slots.map((slot) => columns.visit(group, station, slot)));
      if (!keeps({ kind: 'must-see', group, station })) into.row(visits, '<= 1');
      else if (isSoft) {
        missed.push(into.yesNo(`m_${group}_${station}`));
        into.row([...visits, `+ 1 m_${group}_${station}`], '= 1');
      } else into.row(visits, '= 1');
    }
    if (keeps({ kind: 'lunch', group }))
      into.row(sum(slots.map((slot) => columns.lunch(group, slot))), '= 1');
  }
  return missed;
}

function stationRows(day: Day, keeps: Keeps, { visit, lunch }: Columns, into: Programme): void {
  for (const slot of day.slots.keys()) {
    for (const [station, { groupsAtOnce, pupilsAtOnce }] of day.stations.entries()) {
      const visits = day.groups.map((_, group) => visit(group, station, slot));
      if (keeps({ kind: 'groups-at-once', station })) into.row(sum(visits), `<= ${groupsAtOnce}`);
      if (keeps({ kind: 'pupils-at-once', station })) {
        const heads = day.groups.flatMap(({ pupils }, group) => sum([visits[group] ?? null], pupils));
        into.row(heads, `<= ${pupilsAtOnce}`);
      }
    }
    if (day.lunch !== null && keeps({ kind: 'lunch-places' })) {
      const heads = day.groups.flatMap(({ pupils }, group) => sum([lunch(group, slot)], pupils));
      into.row(heads, `<= ${day.lunch.places}`);
    }
  }
}

/** `i_group` is what a group has free, in minutes. */
function idleRows(day: Day, { visit, lunch }: Columns, into: Programme): readonly string[] {
  return day.groups.map((who, group) => {
    const busy = day.slots.flatMap((bells, slot) =>
      sum(
        [...[...day.stations.keys()].map((station) => visit(group, station, slot)), lunch(group, slot)],
        slotMinutes(bells),
      ),
    );
    const there = day.slots.filter((bells) => isThere(who, bells));
    into.row(
      [...busy, `+ 1 i_${group}`],
      `= ${there.reduce((minutes, bells) => minutes + slotMinutes(bells), 0)}`,
    );
    return `i_${group}`;
  });
}

/** Visits and lunches as they stand in a plan. */
function settledRows(day: Day, groups: DayPlan['groups'], columns: Columns, into: Programme): void {
  for (const [group, row] of groups.entries()) {
    for (const [slot, doing] of row.entries()) {
      for (const station of day.stations.keys()) {
        const isHere = doing.kind === 'station' && doing.station === station;
        into.row(sum([columns.visit(group, station, slot)]), `= ${isHere ? 1 : 0}`);
      }
      into.row(sum([columns.lunch(group, slot)]), `= ${doing.kind === 'lunch' ? 1 : 0}`);
    }
  }
}

/** Each group at the places of its route; which station of a place is left open. */
function routeRows(day: Day, routes: readonly (readonly Step[])[], columns: Columns, into: Programme): void {
  for (const [group, route] of routes.entries()) {
    for (const { slot, kind, place } of route) {
      for (const [station, { place: name }] of day.stations.entries()) {
        const isElsewhere = kind !== 'visit' || name !== day.places[place];
        const visit = sum([columns.visit(group, station, slot)]);
        if (isElsewhere && visit.length > 0) into.row(visit, '= 0');
      }
      const here = day.stations.map(({ place: name }, station) =>
        kind === 'visit' && name === day.places[place] ? columns.visit(group, station, slot) : null,
      );
      if (kind === 'visit') into.row(sum(here), '= 1');
      const lunch = sum([columns.lunch(group, slot)]);
      if (lunch.length > 0) into.row(lunch, `= ${kind === 'lunch' ? 1 : 0}`);
    }
  }
}

/**
 * A day as a programme in LP text, to be minimised: the rules given, and one aim.
 *
 * Source of the form: the usual timetable with one yes-or-no column for each group, station and slot; walking as a flow
 * through the places, so that a slot off changes nothing (DER).
 */
export function dayProgramme(
  day: Day,
  aim: Aim,
  rules: readonly DayRule[] = rulesOf(day),
  settled: Settled = {},
): string {
  const into = programme();
  const kept = new Set(rules.map(ruleKey));
  const keeps: Keeps = (rule) => kept.has(ruleKey(rule));
  const columns = columnsOf(day, keeps, into);
  const missed = groupRows(day, keeps, columns, into, aim === 'missed');
  stationRows(day, keeps, columns, into);
  fixedRows(day, keeps, columns, into);
  if (settled.routes !== undefined) routeRows(day, settled.routes, columns, into);
  const { inHand } = settled;
  if (inHand !== undefined) pastRows(day, inHand, columns, into);
  const serves = crewRows(day, keeps, columns, into, { isCounted: aim === 'changes', inHand });
  const walked = walkRows(day, keeps, columns, into, aim === 'walking');
  if (aim === 'any') return into.text([]);
  if (aim === 'missed') return into.text(sum(missed));
  if (aim === 'changes') {
    settledRows(day, settled.groups ?? [], columns, into);
    return into.text(serves);
  }
  if (inHand !== undefined && (aim === 'moved' || settled.movedCells !== undefined)) {
    const moved = movedRows(day, inHand, columns, into);
    if (aim === 'moved') return into.text(moved);
    if (moved.length > 0) into.row(moved, `<= ${settled.movedCells}`);
  }
  const idle = idleRows(day, columns, into);
  if (settled.idleMinutes !== undefined) into.row(sum(idle), `<= ${settled.idleMinutes}`);
  if (aim === 'idle') return into.text(sum(idle));
  for (const name of idle) {
    into.row([`+ 1 most`, `- 1 ${name}`], '>= 0');
    into.row([`+ 1 ${name}`, `- 1 least`], '>= 0');
  }
  if (settled.unevenMinutes !== undefined) into.row(['+ 1 most', '- 1 least'], `<= ${settled.unevenMinutes}`);
  if (settled.leastWalking !== undefined && walked.length > 0) into.row(walked, `>= ${settled.leastWalking}`);
  return into.text(aim === 'uneven' ? ['+ 1 most', '- 1 least'] : walked);
}
