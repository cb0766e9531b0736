import { describe, expect, test } from 'vitest';
import { momentOf, sheetsAt, walkTo, type Day, type DayPlan } from '../../../shared/day/index.ts';
import { squareDay } from './make-day.ts';

const day = squareDay(1, 2, 2);

describe('what runs at a minute: slots 9:00 to 9:20 and 9:25 to 9:45', () => {
  test.each([
    { minute: 500, expected: { kind: 'before', slot: null, next: 0, minutesLeft: 40 } },
    { minute: 540, expected: { kind: 'slot', slot: 0, next: 1, minutesLeft: 20 } },
    { minute: 559, expected: { kind: 'slot', slot: 0, next: 1, minutesLeft: 1 } },
    { minute: 560, expected: { kind: 'between', slot: null, next: 1, minutesLeft: 5 } },
    { minute: 565, expected: { kind: 'slot', slot: 1, next: null, minutesLeft: 20 } },
    { minute: 585, expected: { kind: 'after', slot: null, next: null, minutesLeft: null } },
  ])('$minute: $expected.kind', ({ minute, expected }) => {
    expect(momentOf(day, minute)).toEqual(expected);
  });

  test('without a gap the next bell rings the slot in', () => {
    const slots = [
      { fromMinute: 600, toMinute: 620 },
      { fromMinute: 620, toMinute: 640 },
    ];
    expect(momentOf({ slots }, 620)).toEqual({ kind: 'slot', slot: 1, next: null, minutesLeft: 20 });
  });
});

describe('on paper', () => {
  const plan: DayPlan = {
    groups: [
      [{ kind: 'station', station: 0 }, { kind: 'free' }, { kind: 'station', station: 1 }, { kind: 'lunch' }],
      [{ kind: 'away' }, { kind: 'station', station: 1 }, { kind: 'free' }, { kind: 'free' }],
    ],
    crew: [],
  };
  const base = squareDay(2, 2, 4);
  const kitted: Day = {
    ...base,
    stations: base.stations.map((station, index) => ({ ...station, sheetsEach: index * 2 })),
    places: ['p0', 'p1', 'gate'],
    gate: 'gate',
    lunch: { slots: [3], places: 20, place: 'p0' },
    walkMinutes: [
      [0, 3, 1],
      [3, 0, 2],
      [1, 2, 0],
    ],
  };

  test('sheets: two for each of ten pupils of two groups, counted by hand', () => {
    expect([sheetsAt(kitted, plan, 0), sheetsAt(kitted, plan, 1)]).toEqual([0, 40]);
  });

  test('walks: from the gate first, and past a slot with nothing on', () => {
    expect([0, 1, 2, 3].map((slot) => walkTo(kitted, plan, 0, slot))).toEqual([1, 0, 3, 3]);
    expect(walkTo(kitted, plan, 1, 1)).toBe(2);
    expect(walkTo({ ...kitted, gate: null }, plan, 1, 1)).toBe(0);
  });
});
