import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { newFolder, runPitlore } from './run-pitlore.ts';

test('a table that is too small, and one more place', () => {
  const { code, out, err } = runPitlore(['dropin', '--per-hour', '20', '--minutes', '8', '--places', '2']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('2 places: the queue grows all day; it takes 3 at least');
  expect(out).toContain('3 places: 80 % wait; on average over 15 minutes');
  expect(out).toContain('4 places: 38 % wait; on average under 5 minutes');
});

test('the same as numbers', () => {
  const { out } = runPitlore(['dropin', '--per-hour', '60', '--minutes', '2', '--places', '3', '--json']);
  const answer = JSON.parse(out);
  expect(answer).toMatchObject({ perHour: 60, minutes: 2, places: 3, load: 2, leastPlaces: 3 });
  expect(answer.queue.waitShare).toBeCloseTo(4 / 9, 9);
});

test.each([
  [['--per-hour', '20', '--minutes', '8'], 'needs three numbers'],
  [['--per-hour', '0', '--minutes', '8', '--places', '2'], 'expected --per-hour'],
  [['--per-hour', '20', '--minutes', 'x', '--places', '2'], 'received "x"'],
  [['--per-hour', '20', '--minutes', '8', '--places', '2.5'], 'expected --places with a whole number'],
])('%j: 2, and how to', (argv, says) => {
  const { code, out, err } = runPitlore(['dropin', ...argv]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(says);
});

test('day --ics writes a calendar with every slot, and never over a file', () => {
  const folder = newFolder();
  const file = join(folder, 'day.ics');
  const argv = ['day', 'content/days/class-morning.yaml', '--wet', '--json', '--ics', file];
  const ran = runPitlore(argv);
  expect(ran).toMatchObject({ code: 0, err: '' });
  const answer = JSON.parse(ran.out);
  const visits = answer.rounds.flatMap(({ groups }: { groups: { station: string | null }[] }) =>
    groups.filter(({ station }) => station !== null),
  );
  const posts = answer.adults.flatMap(({ stations }: { stations: (string | null)[] }) =>
    stations.filter((station) => station !== null),
  );
  expect(visits).toHaveLength(20);
  const calendar = new ICAL.Component(ICAL.parse(readFileSync(file, 'utf8')));
  expect(calendar.getAllSubcomponents('vevent')).toHaveLength(visits.length + posts.length);
  const before = readFileSync(file, 'utf8');
  expect(runPitlore(argv)).toMatchObject({ code: 1, out: '' });
  expect(readFileSync(file, 'utf8')).toBe(before);
  rmSync(folder, { recursive: true });
});

test('a day without a date, or without a plan, gives no calendar', () => {
  const folder = newFolder();
  const text = readFileSync('content/days/class-morning.yaml', 'utf8');
  const day = join(folder, 'day.yaml');
  const file = join(folder, 'day.ics');
  writeFileSync(day, text.replace('date: "2027-06-10"\n', ''));
  expect(runPitlore(['day', day, '--ics', file]).err).toContain('says no date');
  writeFileSync(day, text.replaceAll('leaves: "12:20"', 'leaves: "11:00"'));
  const { code, out, err } = runPitlore(['day', day, '--ics', file]);
  expect(code).toBe(0);
  expect(out).toContain('There is no such day.');
  expect(err).toContain('was not written');
  expect(existsSync(file)).toBe(false);
  rmSync(folder, { recursive: true });
});
