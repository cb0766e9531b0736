import { isThere, type Day } from './day.ts';
import type { Columns, Keeps } from './columns.ts';
import { leastWalk } from './least-round.ts';
import { sum, type Programme } from './programme.ts';

/** The columns that put a group at a place in a slot. */
const atPlace =
  (day: Day, { visit, lunch }: Columns) =>
  (group: number, place: string, slot: number): readonly string[] =>
    sum([
      ...day.stations.map((station, index) => (station.place === place ? visit(group, index, slot) : null)),
      day.lunch?.place === place ? lunch(group, slot) : null,
    ]);

/** A walk longer than the time between two bells is not made from one slot to the next. */
function bellRows(day: Day, columns: Columns, into: Programme): void {
  const at = atPlace(day, columns);
  for (const [slot, bells] of day.slots.entries()) {
    const next = day.slots[slot + 1];
    if (next === undefined) continue;
    for (const [from, row] of day.walkMinutes.entries()) {
      for (const [to, minutes] of row.entries()) {
        if (minutes <= next.fromMinute - bells.toMinute) continue;
        for (const group of day.groups.keys()) {
          const before = at(group, day.places[from] ?? '', slot);
          const after = at(group, day.places[to] ?? '', slot + 1);
          if (before.length > 0 && after.length > 0) into.row([...before, ...after], '<= 1');
        }
      }
    }
  }
}

/** Each group as a flow from place to place, slot by slot: the terms of the minutes walked. */
function flowRows(day: Day, columns: Columns, into: Programme): readonly string[] {
  const at = atPlace(day, columns);
  const gate = day.gate === null ? -1 : day.places.indexOf(day.gate);
  const cost: string[] = [];
  for (const [group, who] of day.groups.entries()) {
    const there = [...day.slots.entries()].filter(([, bells]) => isThere(who, bells)).map(([slot]) => slot);
    // In place of a slot, null stands for the gate, before and after.
    const steps: readonly (number | null)[] = gate < 0 ? there : [null, ...there, null];
    const flow = (step: number, from: number, to: number): string => `f_${group}_${step}_${from}_${to}`;
    const places = [...day.places.keys()];
    const own: string[] = [];
    for (const [step, slot] of steps.entries()) {
      const outOf = (place: number): readonly string[] => places.map((to) => flow(step, place, to));
      const inTo = (place: number): readonly string[] => places.map((from) => flow(step - 1, from, place));
      const isLast = step === steps.length - 1;
      if (steps.length < 2) continue;
      if (step === 0) into.row(sum(places.flatMap(outOf)), '= 1');
      for (const place of places) {
        const here = isLast ? inTo(place) : outOf(place);
        if (step > 0 && !isLast) into.row([...sum(inTo(place)), ...sum(outOf(place), -1)], '= 0');
        if (slot === null) into.row(sum(here), place === gate ? '= 1' : '= 0');
        else {
          const kept = at(group, day.places[place] ?? '', slot).map((term) => term.replace('+', '-'));
          if (kept.length > 0) into.row([...sum(here), ...kept], '>= 0');
        }
        if (isLast) continue;
        for (const to of places) {
          const minutes = day.walkMinutes[place]?.[to] ?? 0;
          if (minutes > 0) own.push(`+ ${minutes} ${flow(step, place, to)}`);
        }
      }
    }
    // Implied by the rest, and the solver does not see it: it proves most of the bound.
    if (own.length > 0) into.row(own, `>= ${leastWalk(day, group)}`);
    cost.push(...own);
  }
  return cost;
}

/** The rows of walking in time, and with `isCounted` those of minutes walked; [] where those are not asked for. */
export function walkRows(
  day: Day,
  keeps: Keeps,
  columns: Columns,
  into: Programme,
  isCounted: boolean,
): readonly string[] {
  if (keeps({ kind: 'walk' })) bellRows(day, columns, into);
  return isCounted ? flowRows(day, columns, into) : [];
}
