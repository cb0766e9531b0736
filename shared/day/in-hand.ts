import type { Columns, Keeps } from './columns.ts';
import type { Day } from './day.ts';
import type { DayPlan, Doing } from './plan.ts';
import { sum, type Programme } from './programme.ts';

/** A plan that is already on paper: what has happened stays, and the rest is changed as little as can be. */
export interface InHand {
  readonly plan: DayPlan;
  /** The number of the first slot that can still be changed; 0 before the day begins. */
  readonly fromSlot: number;
}

const isSame = (one: Doing | undefined, other: Doing | undefined): boolean =>
  one?.kind === other?.kind &&
  (one?.kind !== 'station' || other?.kind !== 'station' || one.station === other.station);

/** How many slots of groups that can still be changed are not as they stood. */
export const movedCells = (plan: DayPlan, { plan: before, fromSlot }: InHand): number =>
  plan.groups.reduce(
    (moved, row, group) =>
      moved +
      row.filter(
        (doing, slot) =>
          slot >= fromSlot && doing.kind !== 'away' && !isSame(doing, before.groups[group]?.[slot]),
      ).length,
    0,
  );

/** What a lead has fixed by hand. */
export function fixedRows(day: Day, keeps: Keeps, { visit, lunch }: Columns, into: Programme): void {
  for (const [index, { group, slot, at }] of day.fixed.entries()) {
    if (!keeps({ kind: 'fixed', fixed: index })) continue;
    if (at.kind === 'station') into.row(sum([visit(group, at.station, slot)]), '= 1');
    else if (at.kind === 'lunch') into.row(sum([lunch(group, slot)]), '= 1');
    else {
      const all = [...day.stations.keys()].map((station) => visit(group, station, slot));
      const terms = sum([...all, lunch(group, slot)]);
      if (terms.length > 0) into.row(terms, '= 0');
    }
  }
}

/** The one column that says a group does as it did; null where there is none, or it had nothing on. */
function sameColumn(doing: Doing | undefined, group: number, slot: number, columns: Columns): string | null {
  if (doing?.kind === 'station') return columns.visit(group, doing.station, slot);
  return doing?.kind === 'lunch' ? columns.lunch(group, slot) : null;
}

/** What has happened, wherever the day still allows it to have happened. */
export function pastRows(day: Day, { plan, fromSlot }: InHand, columns: Columns, into: Programme): void {
  for (const group of day.groups.keys()) {
    for (let slot = 0; slot < Math.min(fromSlot, day.slots.length); slot += 1) {
      const doing = plan.groups[group]?.[slot];
      const kept = sameColumn(doing, group, slot, columns);
      if (kept !== null) into.row(sum([kept]), '= 1');
      if (kept !== null || doing?.kind === 'station' || doing?.kind === 'lunch') continue;
      const all = [...day.stations.keys()].map((station) => columns.visit(group, station, slot));
      const terms = sum([...all, columns.lunch(group, slot)]);
      if (terms.length > 0) into.row(terms, '= 0');
    }
  }
}

/** `d_group_slot` is 1 where a slot to come is not as it stood: its terms. */
export function movedRows(
  day: Day,
  { plan, fromSlot }: InHand,
  columns: Columns,
  into: Programme,
): readonly string[] {
  const moved: string[] = [];
  for (const group of day.groups.keys()) {
    for (let slot = fromSlot; slot < day.slots.length; slot += 1) {
      const doing = plan.groups[group]?.[slot];
      const all = [...day.stations.keys()].map((station) => columns.visit(group, station, slot));
      const terms = sum([...all, columns.lunch(group, slot)]);
      const name = `d_${group}_${slot}`;
      if (doing?.kind === 'free')
        into.row([...terms.map((term) => term.replace('+', '-')), `+ 1 ${name}`], '>= 0');
      else if (doing?.kind === 'away') continue;
      else into.row([...sum([sameColumn(doing, group, slot, columns)]), `+ 1 ${name}`], '>= 1');
      moved.push(`+ 1 ${name}`);
    }
  }
  return moved;
}
