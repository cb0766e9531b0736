import type { Day, DayPlan, Doing } from '../../../shared/day/index.ts';
import { brokenRules } from './broken-rules.ts';

interface Minutes {
  readonly idleMinutes: number;
  readonly unevenMinutes: number;
  readonly walkingMinutes: number;
}

/** Every row a group could have: each slot a station, lunch, or nothing; no station twice. */
function rowsOf(day: Day, group: number): Doing[][] {
  const who = day.groups[group];
  let rows: Doing[][] = [[]];
  for (const { fromMinute, toMinute } of day.slots) {
    const isHere = who !== undefined && who.arrivesMinute <= fromMinute && toMinute <= who.leavesMinute;
    const choices: Doing[] = isHere
      ? [
          { kind: 'free' },
          { kind: 'lunch' },
          ...day.stations.map((_, station): Doing => ({ kind: 'station', station })),
        ]
      : [{ kind: 'away' }];
    rows = rows.flatMap((row) => choices.map((choice) => [...row, choice]));
  }
  // What one group breaks by itself is seen with the others, and the crew, left out.
  const alone: Day = { ...day, groups: who === undefined ? [] : [who], adults: [] };
  return rows.filter((row) => brokenRules(alone, { groups: [row], crew: [] }).length === 0);
}

/** Every way of sending adults to the stations in use; true when one keeps every rule. Slot by slot, then checked whole. */
function canBeStaffed(day: Day, groups: DayPlan['groups']): boolean {
  if (day.adults.length === 0) return true;
  const ways = day.slots.map((_, slot) => {
    const used = [
      ...new Set(groups.flatMap((row) => (row[slot]?.kind === 'station' ? [row[slot].station] : []))),
    ];
    let sent: (number | null)[][] = [[]];
    for (let adult = 0; adult < day.adults.length; adult += 1)
      sent = sent.flatMap((some) => [null, ...used].map((station) => [...some, station]));
    // One adult too many only makes breaks harder, so just enough are sent.
    return sent.filter((some) =>
      used.every((station) => {
        const at = day.stations[station];
        const staff = day.adults.filter((__, adult) => some[adult] === station);
        return (
          at !== undefined &&
          staff.length === Math.max(at.adults, at.skill === null ? 0 : 1) &&
          (at.skill === null || staff.some(({ skills }) => skills.includes(at.skill ?? '')))
        );
      }),
    );
  });
  const walk = (slot: number, sent: readonly (readonly (number | null)[])[]): boolean => {
    if (slot === day.slots.length) {
      const crew = day.adults.map((_, adult) => sent.map((some) => some[adult] ?? null));
      return brokenRules(day, { groups, crew }).length === 0;
    }
    return (ways[slot] ?? []).some((some) => walk(slot + 1, [...sent, some]));
  };
  return walk(0, []);
}

function minutesOfRow(day: Day, row: readonly Doing[]): { idle: number; walking: number } {
  let idle = 0;
  const stops: string[] = [];
  row.forEach((doing, slot) => {
    const bells = day.slots[slot];
    if (doing.kind === 'free' && bells !== undefined) idle += bells.toMinute - bells.fromMinute;
    if (doing.kind === 'station') stops.push(day.stations[doing.station]?.place ?? '');
    if (doing.kind === 'lunch') stops.push(day.lunch?.place ?? '');
  });
  const isThere = row.some(({ kind }) => kind !== 'away');
  const whole = day.gate === null || !isThere ? stops : [day.gate, ...stops, day.gate];
  let walking = 0;
  for (let step = 1; step < whole.length; step += 1) {
    const from = day.places.indexOf(whole[step - 1] ?? '');
    walking += day.walkMinutes[from]?.[day.places.indexOf(whole[step] ?? '')] ?? Number.NaN;
  }
  return { idle, walking };
}

/** The best of all plans of a tiny day, in the strict order idle, uneven, walking; null where no plan keeps the rules. */
export function searchDay(day: Day): Minutes | null {
  const rows = day.groups.map((_, group) =>
    rowsOf(day, group).map((row) => ({ row, ...minutesOfRow(day, row) })),
  );
  const all: { groups: Doing[][]; minutes: Minutes }[] = [];
  const noCrew: Day = { ...day, adults: [] };
  const walk = (group: number, chosen: { row: Doing[]; idle: number; walking: number }[]): void => {
    const groups = chosen.map(({ row }) => row);
    const some: Day = { ...noCrew, groups: day.groups.slice(0, group) };
    if (group > 1 && brokenRules(some, { groups, crew: [] }).length > 0) return;
    if (group < day.groups.length) {
      for (const row of rows[group] ?? []) walk(group + 1, [...chosen, row]);
      return;
    }
    const idle = chosen.map((each) => each.idle);
    all.push({
      groups,
      minutes: {
        idleMinutes: idle.reduce((sum, each) => sum + each, 0),
        unevenMinutes: Math.max(...idle) - Math.min(...idle),
        walkingMinutes: chosen.reduce((sum, each) => sum + each.walking, 0),
      },
    });
  };
  walk(0, []);
  const inOrder = all.toSorted(
    ({ minutes: a }, { minutes: b }) =>
      a.idleMinutes - b.idleMinutes ||
      a.unevenMinutes - b.unevenMinutes ||
      a.walkingMinutes - b.walkingMinutes,
  );
  return inOrder.find(({ groups }) => canBeStaffed(day, groups))?.minutes ?? null;
}
