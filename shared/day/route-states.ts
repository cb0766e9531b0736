import { isThere, slotMinutes, type Day } from './day.ts';

/** What a group does in a slot, as far as places go: which place, and whether to visit, to eat, or neither. */
export interface Step {
  readonly slot: number;
  readonly kind: 'visit' | 'lunch' | 'free' | 'away';
  /** The number of the place; -1 where the step leads nowhere. */
  readonly place: number;
  readonly walkMinutes: number;
}

/** One step from a state to the next; states are numbered, 0 is before the day. */
export interface RouteArc extends Step {
  /** What a group that goes this way has had nothing on so far. */
  readonly idleMinutes: number;
  readonly from: number;
  readonly to: number;
}

/** Every way a group can go from place to place through a day, drawn together where ways meet. */
export interface RouteStates {
  readonly arcs: readonly RouteArc[];
  /** The state in which every way ends. */
  readonly end: number;
}

/** What is asked of a group, place by place. */
export interface RouteWants {
  readonly group: number;
  /** The least and the most idle minutes. */
  readonly idle: readonly [least: number, most: number];
  readonly isWalkInTime: boolean;
}

interface State {
  readonly last: number;
  readonly visits: readonly number[];
  readonly isFed: boolean;
  readonly idleMinutes: number;
  /** True where the last slot was spent at a place: only then must the walk fit between the bells. */
  readonly isBusy: boolean;
}

const keyOf = ({ last, visits, isFed, idleMinutes, isBusy }: State): string =>
  `${last}|${visits.join(',')}|${isFed ? 1 : 0}|${idleMinutes}|${isBusy ? 1 : 0}`;

/** More than so many steps are no relief to the solver. */
const MOST_ARCS = 60_000;

/** What a group may and must visit at each place. */
function wantsAt(day: Day, group: number) {
  const who = day.groups[group];
  return day.places.map((place) => {
    const here = day.stations.filter((station) => station.place === place);
    const fits = here.filter(
      ({ pupilsAtOnce, fromYears }) =>
        who !== undefined && who.pupils <= pupilsAtOnce && who.youngestYears >= fromYears,
    );
    return {
      must: here.filter(({ id }) => who?.mustSee.includes(id)).length,
      may: fits.length,
      isOpen: day.slots.map((_, slot) => fits.some(({ shutSlots }) => !shutSlots.includes(slot))),
    };
  });
}

/**
 * Every way one group can go through a day, as steps between states: where it was last, how often it was at each place,
 * whether it has eaten, how long it had nothing on. Stations of one place are not told apart. Null where there are too many.
 */
export function routeStates(day: Day, { group, idle, isWalkInTime }: RouteWants): RouteStates | null {
  const who = day.groups[group];
  if (who === undefined) return null;
  const wants = wantsAt(day, group);
  const gate = day.gate === null ? -1 : day.places.indexOf(day.gate);
  const lunchPlace = day.lunch === null || !who.hasLunch ? -1 : day.places.indexOf(day.lunch.place);
  const fixedAt = new Map(day.fixed.filter((said) => said.group === group).map(({ slot, at }) => [slot, at]));
  const walk = (from: number, to: number): number =>
    from < 0 || to < 0 ? 0 : (day.walkMinutes[from]?.[to] ?? 0);
  const first: State = { last: -1, visits: wants.map(() => 0), isFed: false, idleMinutes: 0, isBusy: false };

  const nextOf = (state: State, slot: number): readonly { readonly step: Step; readonly state: State }[] => {
    const bells = day.slots[slot];
    if (bells === undefined) return [];
    const stay = { slot, place: -1, walkMinutes: 0 } as const;
    if (!isThere(who, bells))
      return [{ step: { ...stay, kind: 'away' }, state: { ...state, isBusy: false } }];
    const fixed = fixedAt.get(slot);
    const gap = bells.fromMinute - (day.slots[slot - 1]?.toMinute ?? Number.NEGATIVE_INFINITY);
    const from = state.last < 0 ? gate : state.last;
    const isInTime = (place: number): boolean => !isWalkInTime || !state.isBusy || walk(from, place) <= gap;
    const goTo = (kind: 'visit' | 'lunch', place: number, next: Partial<State>) => ({
      step: { slot, kind, place, walkMinutes: walk(from, place) },
      state: { ...state, ...next, last: place, isBusy: isWalkInTime },
    });
    const found: { readonly step: Step; readonly state: State }[] = [];
    for (const [place, { may, isOpen }] of wants.entries()) {
      const isFixedElsewhere =
        fixed !== undefined &&
        (fixed.kind !== 'station' || day.stations[fixed.station]?.place !== day.places[place]);
      if ((state.visits[place] ?? 0) >= may || isOpen[slot] !== true || isFixedElsewhere) continue;
      if (!isInTime(place)) continue;
      const visits = state.visits.map((count, other) => (other === place ? count + 1 : count));
      found.push(goTo('visit', place, { visits }));
    }
    const mayEat = lunchPlace >= 0 && !state.isFed && (day.lunch?.slots.includes(slot) ?? false);
    if (mayEat && (fixed === undefined || fixed.kind === 'lunch') && isInTime(lunchPlace))
      found.push(goTo('lunch', lunchPlace, { isFed: true }));
    const idleMinutes = state.idleMinutes + slotMinutes(bells);
    if ((fixed === undefined || fixed.kind === 'free') && idleMinutes <= idle[1])
      found.push({ step: { ...stay, kind: 'free' }, state: { ...state, idleMinutes, isBusy: false } });
    return found;
  };
  const isDone = ({ visits, isFed, idleMinutes }: State): boolean =>
    visits.every((count, place) => count >= (wants[place]?.must ?? 0)) &&
    (lunchPlace < 0 || isFed) &&
    idleMinutes >= idle[0];

  const arcs: RouteArc[] = [];
  let count = 1;
  let layer = new Map<string, { readonly state: State; readonly number: number }>([
    [keyOf(first), { state: first, number: 0 }],
  ]);
  for (const slot of day.slots.keys()) {
    const reached = new Map<string, { readonly state: State; readonly number: number }>();
    for (const { state, number } of layer.values()) {
      for (const next of nextOf(state, slot)) {
        const key = keyOf(next.state);
        const known = reached.get(key) ?? { state: next.state, number: count++ };
        reached.set(key, known);
        arcs.push({ ...next.step, idleMinutes: next.state.idleMinutes, from: number, to: known.number });
        if (arcs.length > MOST_ARCS) return null;
      }
    }
    layer = reached;
  }
  const end = count;
  for (const { state, number } of layer.values()) {
    if (!isDone(state)) continue;
    const home = state.last < 0 ? 0 : walk(state.last, gate);
    const { idleMinutes } = state;
    const out = { slot: day.slots.length, kind: 'away', place: -1, walkMinutes: home } as const;
    arcs.push({ ...out, idleMinutes, from: number, to: end });
  }
  return { arcs: leadingTo(arcs, end), end };
}

/** Only the steps from which the end can still be reached: arcs stand in the order of the day. */
function leadingTo(arcs: readonly RouteArc[], end: number): readonly RouteArc[] {
  const isGood = new Set([end]);
  const kept: RouteArc[] = [];
  for (const arc of arcs.toReversed()) {
    if (!isGood.has(arc.to)) continue;
    isGood.add(arc.from);
    kept.push(arc);
  }
  return kept.toReversed();
}
