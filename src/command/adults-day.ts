import {
  checkDay,
  dayMoments,
  daySetting,
  plainStations,
  strictestMoment,
  type DayAsked,
  type DayMoment,
} from '../../shared/compile/index.ts';
import { planDay, tellClock, type Day } from '../../shared/day/index.ts';
import { dayAdultsWords } from '../../shared/words/en/day-adults.ts';
import { becauseSentence, safetyWords } from '../../shared/words/en/safety.ts';
import type { SafetyRules } from '../../shared/safety/index.ts';
import { highsSolver } from './highs-solver.ts';
import type { ExitCode, Io } from './io.ts';
import { showProblem } from './show-problem.ts';

/** What finding a timetable may take. ASM. */
const SECONDS = 10;

const bellsOf = (day: Day, { slot }: DayMoment): string => {
  const bells = day.slots[slot];
  return bells === undefined ? '' : `${tellClock(bells.fromMinute)}–${tellClock(bells.toMinute)}`;
};

/** A moment in plain values, for words or JSON. */
const tellMoment = (day: Day, moment: DayMoment) => ({
  bells: bellsOf(day, moment),
  supervisors: moment.supervisors,
  practitioners: moment.practitioners,
  totalAdults: moment.totalAdults,
  eyeSetsNeeded: moment.eyeSetsNeeded,
  parts: moment.parts.map(({ groups, children, youngest, station, kind, report }) => ({
    groups,
    children,
    youngest,
    where: station ?? (kind === null ? dayAdultsWords.free : dayAdultsWords.lunch),
    kind,
    adults: report.adults.totalAdults,
    because: report.adults.because.map(becauseSentence),
    refusals: report.refusals,
  })),
});

/** `adults DAY.yaml`: the adults of each slot by a timetable that is found first; the strictest moment of the day wins. */
export async function adultsOfDay(
  file: string,
  rules: SafetyRules,
  asked: DayAsked,
  isJson: boolean,
  io: Io,
): Promise<ExitCode> {
  const source = await io.read(file);
  const read = checkDay(file, source, rules);
  for (const problem of read.problems) io.complain(showProblem(problem, source));
  const day = read.value;
  if (day === null) return 1;
  const outcome = planDay(day, await highsSolver(SECONDS));
  const moments = 'plan' in outcome ? dayMoments(rules, day, outcome.plan, asked) : [];
  const strictest = strictestMoment(moments);
  if (strictest === null) {
    io.complain(dayAdultsWords.noPlan(file));
    return 1;
  }
  const told = tellMoment(day, strictest);
  if (isJson) {
    const whole = {
      first: safetyWords.first(),
      strictest: told,
      slots: moments.map((each) => tellMoment(day, each)),
    };
    io.write(`${JSON.stringify(whole, null, 2)}\n`);
    return 0;
  }
  io.write(
    [
      `${safetyWords.first()}\n`,
      dayAdultsWords.setting(daySetting(day, asked.setting)),
      dayAdultsWords.plain(plainStations(day)),
      dayAdultsWords.strictest(told.bells, strictest),
      dayAdultsWords.named(day.adults.length),
      ...told.parts.map((part) => dayAdultsWords.part(part)),
      dayAdultsWords.slots(
        moments.map((moment) => ({ bells: bellsOf(day, moment), adults: moment.totalAdults })),
      ),
    ].join(''),
  );
  return 0;
}
