import {
  measurePlan,
  tellClock,
  tellConflict,
  type Day,
  type DayOutcome,
  type DayPlan,
} from '../../shared/day/index.ts';

/** Who is where, slot by slot; slots are numbered from 1, as in the file. */
const rounds = (day: Day, plan: DayPlan) =>
  day.slots.map(({ fromMinute, toMinute }, slot) => ({
    slot: slot + 1,
    from: tellClock(fromMinute),
    to: tellClock(toMinute),
    groups: day.groups.map(({ id }, group) => {
      const doing = plan.groups[group]?.[slot] ?? { kind: 'away' };
      return {
        group: id,
        doing: doing.kind,
        station: doing.kind === 'station' ? (day.stations[doing.station]?.id ?? null) : null,
      };
    }),
  }));

const crew = (day: Day, plan: DayPlan) =>
  day.adults.map(({ id, role }, adult) => ({
    adult: id,
    role,
    stations: (plan.crew[adult] ?? []).map((station) =>
      station === null ? null : (day.stations[station]?.id ?? null),
    ),
  }));

/** A plan, or why there is none, as the command tells it to other programmes. */
export function dayJson(day: Day, outcome: DayOutcome, leftOut: readonly string[]) {
  const none = {
    bound: null,
    movedCells: null,
    rounds: [],
    adults: [],
    groups: [],
    walkingMinutes: null,
    idleMinutes: null,
    unevenMinutes: null,
    conflicts: [],
    isLeastConflict: null,
    reasons: [],
    leastMissed: null,
    leftOut,
  };
  switch (outcome.status) {
    case 'unknown':
      return { status: outcome.status, ...none };
    case 'impossible': {
      const told = tellConflict(day, outcome);
      return {
        status: outcome.status,
        ...none,
        conflicts: told.rules.map(({ rule, says, frees }) => ({ rule, says, frees })),
        isLeastConflict: told.isLeast,
        reasons: told.reasons,
        leastMissed: told.leastMissed,
      };
    }
    case 'optimal':
    case 'bounded':
      return {
        status: outcome.status,
        ...none,
        ...outcome.minutes,
        bound: outcome.bound,
        movedCells: outcome.movedCells,
        rounds: rounds(day, outcome.plan),
        adults: crew(day, outcome.plan),
        groups: measurePlan(day, outcome.plan).map((minutes, group) => ({
          group: day.groups[group]?.id ?? '',
          ...minutes,
        })),
      };
    default:
      return outcome satisfies never;
  }
}
