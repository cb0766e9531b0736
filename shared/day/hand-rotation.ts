import { isThere, type Day } from './day.ts';
import { dayProgramme } from './day-programme.ts';
import { minutesOf, type AimMinutes } from './measure-plan.ts';
import type { DayPlan, Doing } from './plan.ts';
import { readPlan } from './read-plan.ts';
import { rulesOf } from './rules.ts';
import type { Solve } from './solver.ts';

/** The stations in walking order: from the gate (or the first of them) always on to the nearest place that is left. */
function walkingOrder(day: Day): readonly number[] {
  const left = [...day.stations.keys()];
  const order: number[] = [];
  let here =
    day.gate === null ? day.places.indexOf(day.stations[0]?.place ?? '') : day.places.indexOf(day.gate);
  const away = (station: number): number =>
    day.walkMinutes[here]?.[day.places.indexOf(day.stations[station]?.place ?? '')] ?? 0;
  while (left.length > 0) {
    const next = left.reduce((best, station) => (away(station) < away(best) ? station : best));
    order.push(next);
    left.splice(left.indexOf(next), 1);
    here = day.places.indexOf(day.stations[next]?.place ?? '');
  }
  return order;
}

/**
 * The rotation one would write by hand: all move on by one at each bell, in walking order; those who eat do so together in
 * the first lunch slot. Null where there are more groups or stations than slots.
 *
 * Source: the cyclic Latin square (CP): group g in slot t goes to station (g + t) mod n.
 */
function rotationRows(day: Day): DayPlan['groups'] | null {
  const order = walkingOrder(day);
  const lunch = day.lunch?.slots[0] ?? null;
  const isAnyEating = day.groups.some(({ hasLunch }) => hasLunch);
  const rounds = [...day.slots.keys()].filter((slot) => !isAnyEating || slot !== lunch);
  const places = Math.max(order.length, day.groups.length);
  if (places > rounds.length) return null;
  return day.groups.map((who, group) =>
    day.slots.map((bells, slot): Doing => {
      if (!isThere(who, bells)) return { kind: 'away' };
      if (slot === lunch && who.hasLunch) return { kind: 'lunch' };
      const round = rounds.indexOf(slot);
      const station = round < 0 || round >= places ? undefined : order[(group + round) % places];
      const isWanted = station !== undefined && who.mustSee.includes(day.stations[station]?.id ?? '');
      return isWanted ? { kind: 'station', station } : { kind: 'free' };
    }),
  );
}

/** What one would do by hand: the plan where it keeps every rule of the day, else null with why. */
export type HandRotation =
  | { readonly kind: 'keeps'; readonly plan: DayPlan; readonly minutes: AimMinutes }
  | { readonly kind: 'too-few-slots' | 'breaks-rules' };

/** The rotation by hand, with adults sent where it keeps the rules. */
export function handRotation(day: Day, solve: Solve): HandRotation {
  const groups = rotationRows(day);
  if (groups === null) return { kind: 'too-few-slots' };
  const { values } = solve(dayProgramme(day, 'changes', rulesOf(day), { groups }));
  if (values === null) return { kind: 'breaks-rules' };
  const plan = readPlan(day, values);
  return { kind: 'keeps', plan, minutes: minutesOf(day, plan) };
}
