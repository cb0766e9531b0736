import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readDay } from '../../shared/library/index.ts';
import { whenWet, type Day, type DayPlan, type Doing } from '../../shared/day/index.ts';
import { brokenRules } from '../shared/day/broken-rules.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

interface Told {
  readonly status: string;
  readonly bound: { readonly walkingMinutes: number; readonly idleMinutes: number } | null;
  readonly rounds: readonly {
    readonly from: string;
    readonly groups: readonly { readonly doing: Doing['kind']; readonly station: string | null }[];
  }[];
  readonly adults: readonly { readonly role: string; readonly stations: readonly (string | null)[] }[];
  readonly conflicts: readonly { readonly rule: string; readonly says: string }[];
  readonly reasons: readonly { readonly says: string }[];
  readonly walkingMinutes: number | null;
  readonly idleMinutes: number | null;
  readonly leftOut: readonly string[];
}

// What the command prints is its own; a field that is not there fails its test.
const told = (out: string): Told => JSON.parse(out) as Told;

const dayOf = (path: string): Day => {
  const { value, problems } = readDay(path, readFileSync(path, 'utf8'));
  expect(problems).toEqual([]);
  if (value === null) throw new Error(path);
  return value;
};

/** The plan again, from what was printed. */
function planOf(day: Day, { rounds, adults }: Told): DayPlan {
  const number = (id: string | null): number => day.stations.findIndex((station) => station.id === id);
  return {
    groups: day.groups.map((_, group) =>
      rounds.map((round): Doing => {
        const { doing, station } = round.groups[group] ?? { doing: 'away', station: null };
        return doing === 'station' ? { kind: doing, station: number(station) } : { kind: doing };
      }),
    ),
    crew: adults.map(({ stations }) => stations.map((id) => (id === null ? null : number(id)))),
  };
}

const MORNING = 'content/days/class-morning.yaml';
const OPEN_DAY = 'content/days/open-day.yaml';

describe('pitlore day on the demo days', () => {
  test.each([
    { file: MORNING, flags: [] },
    { file: MORNING, flags: ['--wet'] },
    { file: OPEN_DAY, flags: [] },
    { file: OPEN_DAY, flags: ['--wet'] },
  ])('$file $flags: a plan that keeps every rule', ({ file, flags }) => {
    const { code, out, err } = runPitlore(['day', file, '--json', '--seconds', '5', ...flags]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const answer = told(out);
    const whole = dayOf(file);
    const day = flags.length > 0 ? whenWet(whole).day : whole;
    expect(['optimal', 'bounded']).toContain(answer.status);
    expect(answer.conflicts).toEqual([]);
    expect(brokenRules(day, planOf(day, answer))).toEqual([]);
    expect(answer.walkingMinutes).toBeGreaterThanOrEqual(answer.bound?.walkingMinutes ?? Infinity);
    expect(answer.leftOut.length > 0).toBe(flags.length > 0);
  });

  test('a class morning is proved best: each group waits one slot and walks its shortest round', () => {
    // Six slots for five stations: 5 groups x 20 minutes. Gate, tent, oak tree, trench and back: 2 + 1 + 2 + 5 = 10 each.
    const answer = told(runPitlore(['day', MORNING, '--json', '--seconds', '120']).out);
    expect(answer).toMatchObject({ status: 'optimal', idleMinutes: 100, walkingMinutes: 50 });
    expect(answer.bound).toEqual({ idleMinutes: 100, unevenMinutes: 0, walkingMinutes: 50 });
    expect(answer.rounds.map(({ from }) => from)).toEqual([
      '09:50',
      '10:15',
      '10:40',
      '11:05',
      '11:30',
      '11:55',
    ]);
  });

  test('in words: groups and adults in a table, and what it comes to', () => {
    const { code, out } = runPitlore(['day', MORNING, '--wet']);
    expect(code).toBe(0);
    expect(out).toContain('Left out in the rain: The pit.');
    expect(out).toMatch(/^Heron /m);
    expect(out).toMatch(/^Grinder /m);
    expect(out).toContain('Minutes with nothing on, all groups: 200');
  });
});

describe('pitlore day on days that cannot be', () => {
  const folder = join(newFolder(), 'days');
  mkdirSync(folder);
  const text = readFileSync(MORNING, 'utf8');
  const run = (changed: string, ...flags: string[]) => {
    const file = join(folder, 'day.yaml');
    writeFileSync(file, changed);
    const ran = runPitlore(['day', file, ...flags]);
    rmSync(file);
    return ran;
  };

  test('a group that comes late: by counting, and the few rules that clash', () => {
    const changed = text.replace(
      'eel: { name: Eel, pupils: 6, ages: 7-8, arrives: "09:40"',
      'eel: { name: Eel, pupils: 6, ages: 7-8, arrives: "10:20"',
    );
    expect(changed).not.toBe(text);
    const { code, out } = run(changed, '--json');
    expect(code).toBe(0);
    const answer = told(out);
    expect(answer.status).toBe('impossible');
    expect(answer).toMatchObject({
      bound: null,
      rounds: [],
      adults: [],
      walkingMinutes: null,
      idleMinutes: null,
    });
    expect(answer.reasons.map(({ says }) => says)).toEqual([
      'Eel has 5 things to do and is there for 4 slots.',
    ]);
    expect(answer.conflicts.map(({ says }) => says)).toEqual([
      'Eel is there from 10:20 to 12:20.',
      'Eel must see The pit.',
      'Eel must see Sorting table.',
      'Eel must see Pots.',
      'Eel must see Watching the grinder.',
      'Eel must see Drawing finds.',
    ]);
    expect(run(changed).out).toContain('give up any one and the others can');
  });

  test('the one who can is not free: role, skill and station are named', () => {
    const changed = text
      .replace('skills: [pit, grinding], most', 'skills: [pit], most')
      .replace('skills: [grinding], most-in-a-row: 3', 'skills: [grinding], most-in-a-row: 1');
    const answer = told(run(changed, '--json').out);
    expect(answer.reasons.map(({ says }) => says)).toEqual([
      '5 slots need an adult who can do grinding; those who can have 3 between them, breaks kept.',
    ]);
    const says = answer.conflicts.map((conflict) => conflict.says);
    expect(says).toContain('Grinder has a slot off after 1 in a row.');
    expect(says).toContain('Watching the grinder needs an adult who can do grinding.');
  });

  test.each([
    ['skill: pit,', 'skil: pit,', 'expected one of'],
    ['must-see: [pit,', 'must-see: [pits,', '(write "pit")'],
    ['from: "10:15", to: "10:35"', 'from: "10:15", to: "10:05"', 'expected a time after 10:15'],
    ['from: "10:15", to: "10:35"', 'from: "10:05", to: "10:35"', 'begins at 10:10 or later'],
    ['wet: shut', 'shut: [7]', 'expected the number of a slot, 1 to 6'],
    [
      'from: gate, to: tent, minutes: 2',
      'from: gate, to: gate, minutes: 2',
      'no way from "gate" to "trench"',
    ],
    ['from: gate, to: tent', 'from: gat, to: tent', 'received "gat"'],
    ['leaves: "12:20"', 'leaves: "09:20"', 'expected a time after 09:40'],
    ['ages: 7-8', 'ages: young', 'ages such as "7-9"'],
  ])('%s as %s is told with its place', (from, to, says) => {
    const { code, out, err } = run(text.replace(from, to));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(/day\.yaml:\d+:\d+: error: /);
    expect(err).toContain(says);
  });

  test.each(['', '[]', 'title: [', 'groups: {}', '\uFEFFtitle: x'])(
    'any text gives a problem: %j',
    (changed) => {
      expect(run(changed).code).toBe(1);
    },
  );
});

describe('a plan in hand', () => {
  const folder = newFolder();
  const kept = join(folder, 'plan.json');
  const late = join(folder, 'late.yaml');
  const first = runPitlore(['day', MORNING, '--json']).out;
  writeFileSync(kept, first);

  test('with nothing changed, nothing moves', () => {
    const again = told(runPitlore(['day', MORNING, '--json', '--keep', kept]).out);
    expect(again).toMatchObject({ movedCells: 0, rounds: told(first).rounds });
  });

  test('a late bus: what has happened stays, and the plan keeps every rule', () => {
    const text = readFileSync(MORNING, 'utf8').replace('arrives: "09:40"', 'arrives: "10:15"');
    writeFileSync(late, text);
    const again = told(runPitlore(['day', late, '--json', '--keep', kept, '--from', '10:15']).out);
    expect(again.status).toBe('optimal');
    expect(brokenRules(dayOf(late), planOf(dayOf(late), again))).toEqual([]);
    expect(again.rounds[0]?.groups[0]?.doing).toBe('away');
    expect(again.rounds[0]?.groups.slice(1)).toEqual(told(first).rounds[0]?.groups.slice(1));
    expect(runPitlore(['day', late, '--keep', kept, '--from', '10:15']).out).toMatch(
      /\d slots? (is|are) not as in the plan/,
    );
  });

  test.each([
    { argv: ['--from', '10:15'], code: 2 },
    { argv: ['--keep', kept, '--from', 'ten'], code: 2 },
    { argv: ['--keep', MORNING], code: 1 },
  ])('$argv: $code, and how to', ({ argv, code }) => {
    expect(runPitlore(['day', MORNING, ...argv]).code).toBe(code);
  });
});

test('what would free a day that cannot be is said beside each rule', () => {
  const file = join(newFolder(), 'day.yaml');
  writeFileSync(file, readFileSync(MORNING, 'utf8').replace('arrives: "09:40"', 'arrives: "10:20"'));
  const { out } = runPitlore(['day', file]);
  expect(out).toContain('  Heron must see Pots.\n    Let Heron go without Pots.\n');
  expect(out).toContain('Have Heron there from 09:50 to 12:20.');
});

test.each([[['day']], [['day', MORNING, 'more.yaml']], [['day', MORNING, '--seconds', '0']]])(
  '%j: 2, and how to',
  (argv) => {
    expect(runPitlore(argv).code).toBe(2);
  },
);

describe('pitlore day --from-lesson', () => {
  const folder = newFolder();
  const ours = join(folder, 'axe-day.yaml');
  const LESSON = 'content/lessons/order-of-an-axe.md';

  test('writes a day file that checks clean and is planned; never over one that is there', () => {
    const { code, out, err } = runPitlore(['day', '--from-lesson', LESSON, '--out', ours]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain(`wrote ${ours}.`);
    expect(runPitlore(['check', ours]).out).toBe('1 file checked: 0 errors, 0 cautions\n');
    const answer = told(runPitlore(['day', ours, '--json']).out);
    expect(answer.status).toBe('optimal');
    expect(brokenRules(dayOf(ours), planOf(dayOf(ours), answer))).toEqual([]);
    const again = runPitlore(['day', '--from-lesson', LESSON, '--out', ours]);
    expect(again).toMatchObject({ code: 1, out: '' });
    expect(again.err).toContain('axe-day.yaml is there already');
  });

  test('without a file it goes to the screen, for as many pupils as asked', () => {
    const { code, out } = runPitlore(['day', '--from-lesson', LESSON, '--pupils', '12']);
    expect(code).toBe(0);
    expect(out).toMatch(/^# Made from the lesson “The order of an axe” \(order-of-an-axe\.md\)/);
    // Three stations: three groups of four.
    expect(out.match(/pupils: 4, ages: 11-13/g)).toHaveLength(3);
  });

  test('a lesson with nothing that can be a station is told in words', () => {
    const lesson = join(folder, 'words.md');
    writeFileSync(
      lesson,
      '---\ntitle: Words\nsite: wendle-marsh\nbands: [7-9]\nminutes: 30\n---\nOnly words.\n',
    );
    const { code, out, err } = runPitlore(['day', '--from-lesson', lesson]);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('“Words” has nothing that can be a station of a day');
  });

  test.each([
    { argv: ['--from-lesson', LESSON, '--pupils', '0'] },
    { argv: ['--from-lesson', LESSON, MORNING] },
    { argv: ['--from-lesson', LESSON, '--json'] },
    { argv: [MORNING, '--pupils', '12'] },
  ])('$argv: 2, and how to', ({ argv }) => {
    expect(runPitlore(['day', ...argv]).code).toBe(2);
  });
});
