import * as fc from 'fast-check';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { dayCalendar, type DayPlan } from '../../../shared/day/index.ts';
import { adultOf, squareDay } from './make-day.ts';

const STAMP = { date: '20270610', stamp: '20270601T080000Z', lunchWord: 'lunch' };

const plan: DayPlan = {
  groups: [[{ kind: 'station', station: 0 }, { kind: 'free' }, { kind: 'lunch' }]],
  crew: [[0, null, null]],
};

/** A day of one group and one adult, with names of anyone's choosing. */
const dayWith = (group: string, station: string, place: string) => {
  const day = squareDay(1, 1, 3, { title: group, lunch: { slots: [2], places: 20, place } });
  return {
    ...day,
    groups: day.groups.map((each) => ({ ...each, name: group })),
    stations: day.stations.map((each) => ({ ...each, name: station, place })),
    adults: [adultOf(0, 3, { role: 'Knapper' })],
  };
};

const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

test('an outside reader of RFC 5545 finds who, what, where and when', () => {
  const events = eventsOf(dayCalendar(dayWith('Heron', 'Pots', 'tent'), plan, STAMP));
  expect(
    events.map(({ summary, location, startDate, endDate }) => [
      summary,
      location,
      startDate.toString(),
      endDate.toString(),
      startDate.zone?.tzid,
    ]),
  ).toEqual([
    ['Heron: Pots', 'tent', '2027-06-10T09:00:00', '2027-06-10T09:20:00', 'floating'],
    ['Heron: lunch', 'tent', '2027-06-10T09:50:00', '2027-06-10T10:10:00', 'floating'],
    ['Knapper: Pots', 'tent', '2027-06-10T09:00:00', '2027-06-10T09:20:00', 'floating'],
  ]);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(3);
});

test('any names come back as they were, on lines of 75 bytes at most that end as they should', () => {
  const name = fc.string({ unit: 'grapheme', maxLength: 120 }).map((text) => text.replace(/\p{Cc}/gu, ''));
  fc.assert(
    fc.property(name, name, name, (group, station, place) => {
      const text = dayCalendar(dayWith(group, station, place), plan, STAMP);
      const lines = text.split('\r\n');
      expect(lines.at(-1)).toBe('');
      for (const line of lines) {
        expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
        expect(line).not.toMatch(/[\r\n]/);
      }
      const [first] = eventsOf(text);
      expect(first?.summary).toBe(`${group}: ${station}`);
      expect(first?.location ?? '').toBe(place);
    }),
    { seed: 7, numRuns: 300 },
  );
});

test('a name of several lines stays one text, and a character that steers a machine goes', () => {
  const [first] = eventsOf(dayCalendar(dayWith('a\nb\u0007', 'END:VCALENDAR\r\nX', 'c'), plan, STAMP));
  expect(first?.summary).toBe('a\nb: END:VCALENDAR\nX');
});
