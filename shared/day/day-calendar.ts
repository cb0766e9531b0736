import { calendarText, foldLine } from './calendar-lines.ts';
import { tellClock } from './clock.ts';
import type { Day, DaySlot } from './day.ts';
import type { DayPlan } from './plan.ts';

interface Entry {
  readonly id: string;
  readonly who: string;
  readonly what: string;
  readonly place: string;
  readonly bells: DaySlot;
}

/** Everything that stands in a plan: who, what, where, when. */
function entriesOf(day: Day, plan: DayPlan, lunchWord: string): readonly Entry[] {
  const at = (who: string, id: string, slot: number, what: string, place: string): readonly Entry[] => {
    const bells = day.slots[slot];
    return bells === undefined ? [] : [{ id: `${id}-${slot + 1}`, who, what, place, bells }];
  };
  const groups = day.groups.flatMap(({ id, name }, group) =>
    (plan.groups[group] ?? []).flatMap((doing, slot): readonly Entry[] => {
      if (doing.kind === 'lunch') return at(name, `group-${id}`, slot, lunchWord, day.lunch?.place ?? '');
      const station = doing.kind === 'station' ? day.stations[doing.station] : undefined;
      return station === undefined ? [] : at(name, `group-${id}`, slot, station.name, station.place);
    }),
  );
  const adults = day.adults.flatMap(({ id, role }, adult) =>
    (plan.crew[adult] ?? []).flatMap((number, slot): readonly Entry[] => {
      const station = number === null ? undefined : day.stations[number];
      return station === undefined ? [] : at(role, `adult-${id}`, slot, station.name, station.place);
    }),
  );
  return [...groups, ...adults];
}

/**
 * A plan as a calendar file: an entry for each slot of each group and adult, at the clock of wherever it is opened.
 *
 * @param date `20270610`.
 * @param stamp When it was made, in universal time: `20270601T080000Z`.
 *
 * Source: RFC 5545, sections 3.3.5 (form 1, no zone), 3.4, 3.6.1.
 */
export function dayCalendar(
  day: Day,
  plan: DayPlan,
  { date, stamp, lunchWord }: { readonly date: string; readonly stamp: string; readonly lunchWord: string },
): string {
  const time = (minute: number): string => `${date}T${tellClock(minute).replace(':', '')}00`;
  const name = day.title.replace(/[^A-Za-z0-9]+/g, '-');
  const events = entriesOf(day, plan, lunchWord).flatMap(({ id, who, what, place, bells }) => [
    'BEGIN:VEVENT',
    `UID:${id}-${date}-${name}@pitlore.invalid`,
    `DTSTAMP:${stamp}`,
    `DTSTART:${time(bells.fromMinute)}`,
    `DTEND:${time(bells.toMinute)}`,
    `SUMMARY:${calendarText(`${who}: ${what}`)}`,
    `LOCATION:${calendarText(place)}`,
    'END:VEVENT',
  ]);
  const lines = ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//Pitlore//Day//EN', ...events, 'END:VCALENDAR'];
  return `${lines.map(foldLine).join('\r\n')}\r\n`;
}
