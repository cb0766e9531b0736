import { parseArgs } from 'node:util';
import {
  dayCalendar,
  planDay,
  tellClock,
  tellConflict,
  whenWet,
  type Day,
  type DayOutcome,
  type DayPlan,
  type Doing,
} from '../../shared/day/index.ts';
import { checkDay } from '../../shared/compile/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { dayCommandWords } from '../../shared/words/en/day-command.ts';
import { dayFromLesson } from './day-from-lesson.ts';
import { dayJson } from './day-json.ts';
import { inHandFrom, readWrittenPlan } from './plan-in-hand.ts';
import { highsSolver } from './highs-solver.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** What all of a plan may take where nothing is said. ASM. */
const SECONDS = '10';

/** What goes with a day made from a lesson: it is written, not planned. */
const OF_LESSON: readonly string[] = ['from-lesson', 'pupils', 'out'];

function tellDoing(day: Day, doing: Doing): string {
  switch (doing.kind) {
    case 'station':
      return day.stations[doing.station]?.name ?? '';
    case 'lunch':
    case 'free':
    case 'away':
      return dayCommandWords[doing.kind];
    default:
      return doing satisfies never;
  }
}

function tables(day: Day, plan: DayPlan): string {
  const bells = day.slots.map(({ fromMinute }) => tellClock(fromMinute));
  const groups = plan.groups.map((row, group) => [
    day.groups[group]?.name ?? '',
    ...row.map((doing) => tellDoing(day, doing)),
  ]);
  const crew = plan.crew.map((row, adult) => [
    day.adults[adult]?.role ?? '',
    ...row.map((station) => (station === null ? dayCommandWords.off : (day.stations[station]?.name ?? ''))),
  ]);
  const table = (head: string, rows: readonly (readonly string[])[]): string =>
    rows.length === 0 ? '' : dayCommandWords.table([[head, ...bells], ...rows]);
  return table(dayCommandWords.groups, groups) + table(dayCommandWords.adults, crew);
}

function tell(day: Day, outcome: DayOutcome): string {
  switch (outcome.status) {
    case 'optimal':
    case 'bounded': {
      const { idleMinutes, unevenMinutes, walkingMinutes } = outcome.minutes;
      const isWaitSettled =
        outcome.bound.idleMinutes === idleMinutes && outcome.bound.unevenMinutes === unevenMinutes;
      const proof =
        outcome.status === 'optimal'
          ? dayCommandWords.optimal()
          : isWaitSettled
            ? dayCommandWords.bounded(walkingMinutes, outcome.bound.walkingMinutes)
            : dayCommandWords.waitsOpen();
      return (
        tables(day, outcome.plan) +
        dayCommandWords.minutes(idleMinutes, unevenMinutes, walkingMinutes) +
        (outcome.movedCells === null ? '' : dayCommandWords.moved(outcome.movedCells)) +
        proof
      );
    }
    case 'impossible': {
      const { reasons, rules, isLeast, leastMissed } = tellConflict(day, outcome);
      return (
        dayCommandWords.impossible() +
        dayCommandWords.counted(reasons.map(({ says }) => says)) +
        (isLeast === null ? '' : dayCommandWords.conflict(rules, isLeast)) +
        (leastMissed === null ? '' : dayCommandWords.leastMissed(leastMissed))
      );
    }
    case 'unknown':
      return dayCommandWords.unknown();
    default:
      return outcome satisfies never;
  }
}

/** Saves the plan as a calendar file; without a plan there is nothing to save, and that is said. */
async function saveCalendar(path: string, day: Day, outcome: DayOutcome, io: Io): Promise<void> {
  if (!('plan' in outcome)) {
    io.complain(dayCommandWords.noCalendar(path));
    return;
  }
  const stamp = new Date().toISOString().replace(/[-:]|\.\d+/g, '');
  const date = (day.date ?? '').replaceAll('-', '');
  await io.save(path, dayCalendar(day, outcome.plan, { date, stamp, lunchWord: dayCommandWords.lunch }));
}

/**
 * `day DAY.yaml [--json] [--wet] [--seconds N] [--ics OUT.ics] [--keep PLAN.json [--from HH:MM]]`: who is where in each slot, or why there is no such day. That there is none
 * is an answer, not an error of the command. `day --from-lesson FILE` writes a day file instead.
 */
export async function day(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      json: { type: 'boolean' },
      wet: { type: 'boolean' },
      seconds: { type: 'string' },
      ics: { type: 'string' },
      keep: { type: 'string' },
      from: { type: 'string' },
      'from-lesson': { type: 'string' },
      pupils: { type: 'string' },
      out: { type: 'string' },
    },
  });
  const [file, more] = positionals;
  const { seconds = SECONDS, pupils, out, 'from-lesson': lesson } = values;
  const isAlone = file === undefined && Object.keys(values).every((key) => OF_LESSON.includes(key));
  if (lesson !== undefined && isAlone) return dayFromLesson({ file: lesson, pupils, out }, io);
  if (lesson !== undefined || pupils !== undefined || out !== undefined) {
    io.complain(dayCommandWords.fromLessonNeeds());
    return 2;
  }
  if (file === undefined || more !== undefined) {
    io.complain(dayCommandWords.needs());
    return 2;
  }
  if (!/^[1-9]\d{0,2}$/.test(seconds) || Number(seconds) > 600) {
    io.complain(dayCommandWords.secondsUnfit(seconds));
    return 2;
  }
  const isFromFit = values.from === undefined || /^([01]\d|2[0-3]):[0-5]\d$/.test(values.from);
  if (!isFromFit || (values.from !== undefined && values.keep === undefined)) {
    io.complain(dayCommandWords.fromUnfit(values.from ?? ''));
    return 2;
  }
  const text = await io.read(file);
  const { library } = await libraryFor(file, undefined, io);
  const read = checkDay(file, text, library.safety);
  for (const problem of read.problems) io.complain(showProblem(problem, text));
  if (read.value === null) return 1;
  const whole = read.value;
  if (values.ics !== undefined && whole.date === null) {
    io.complain(dayCommandWords.noDate(file));
    return 1;
  }
  if (values.ics !== undefined && (await io.exists(values.ics))) {
    io.complain(commandWords.fileExists(values.ics));
    return 1;
  }
  const wet = values.wet === true ? whenWet(whole) : { day: whole, leftOut: [] };
  const before = values.keep === undefined ? null : readWrittenPlan(wet.day, await io.read(values.keep));
  if (values.keep !== undefined && before === null) {
    io.complain(dayCommandWords.keepUnfit(values.keep));
    return 1;
  }
  const inHand = before === null ? undefined : inHandFrom(wet.day, before, values.from);
  const outcome = planDay(wet.day, await highsSolver(Number(seconds)), { inHand });
  if (values.ics !== undefined) await saveCalendar(values.ics, wet.day, outcome, io);
  if (values.json === true) {
    io.write(`${JSON.stringify(dayJson(wet.day, outcome, wet.leftOut), null, 2)}\n`);
    return 0;
  }
  const leftOut = whole.stations.filter(({ id }) => wet.leftOut.includes(id)).map(({ name }) => name);
  io.write(dayCommandWords.first(whole.title) + dayCommandWords.leftOut(leftOut) + tell(wet.day, outcome));
  return 0;
}
