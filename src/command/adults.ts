import { parseArgs } from 'node:util';
import { lessonReport, lessonSetting, type Plan } from '../../shared/compile/index.ts';
import { readSituation, youngestAge } from '../../shared/library/index.ts';
import {
  plainSituation,
  safetyReport,
  type SafetyReport,
  type SafetyRules,
  type Situation,
} from '../../shared/safety/index.ts';
import { becauseSentence, safetyWords } from '../../shared/words/en/safety.ts';
import { adultsOfDay } from './adults-day.ts';
import { askedRatios } from './asked-ratios.ts';
import type { ExitCode, Io } from './io.ts';
import { readPlan } from './lesson-group.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

const text = { type: 'string' } as const;
const options = {
  situation: text,
  pupils: text,
  ages: text,
  framework: { type: 'string', multiple: true },
  local: text,
  setting: text,
  content: text,
  json: { type: 'boolean' },
} as const;

type Values = ReturnType<typeof parseArgs<{ options: typeof options }>>['values'];

/** What is asked of a class, or the sentence that says which option does not fit. */
function groupOf(values: Values, plan: Plan, rules: SafetyRules): Situation | string {
  const pupils = values.pupils ?? '';
  if (!/^\d{1,4}$/.test(pupils)) return safetyWords.pupilsUnfit(pupils);
  const ages = values.ages === undefined ? null : /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(values.ages);
  const age = ages === null ? youngestAge(plan.bands) : Number(ages[1]);
  const oldest = ages === null ? age : Number(ages[2] ?? ages[1]);
  if ((values.ages !== undefined && ages === null) || age < 4 || oldest > 16 || oldest < age) {
    return safetyWords.agesUnfit(values.ages ?? '');
  }
  const asked = askedRatios(values, lessonSetting(plan), rules);
  if (typeof asked === 'string') return asked;
  const { frameworks, setting, localChildrenPerAdult } = asked;
  return { ...plainSituation(Number(pupils), age, frameworks, setting), localChildrenPerAdult };
}

function show(report: SafetyReport, isJson: boolean, io: Io): ExitCode {
  const { adults, refusals, hazards, controls, kit, signs } = report;
  const because = adults.because.map(becauseSentence);
  if (!isJson) {
    io.write(`${safetyWords.first()}\n\n`);
    io.write(
      safetyWords.adults(
        adults,
        because,
        refusals,
        hazards.map(({ name }) => name),
      ),
    );
    return 0;
  }
  const whole = {
    first: safetyWords.first(),
    ...adults,
    refusals: [...new Set(refusals.map(({ id }) => id))],
    refused: refusals,
    hazards: hazards.map(({ id }) => id),
    controls: controls.map(({ id }) => id),
    kit,
    signs,
    because,
  };
  io.write(`${JSON.stringify(whole, null, 2)}\n`);
  return 0;
}

/**
 * `adults FILE --pupils N [--ages A-B] [--framework ID]… [--json]`, `adults DAY.yaml [--framework ID]… [--json]`,
 * `adults --situation FILE.yaml [--json]`: how many adults, and why. A refusal is an answer, not an error of the command.
 */
export async function adults(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({ args: [...argv], allowPositionals: true, options });
  const isJson = values.json === true;
  const [file] = positionals;
  if (values.situation !== undefined) {
    const source = await io.read(values.situation);
    const { library } = await libraryFor(values.situation, values.content, io);
    const read = readSituation(values.situation, source, library.safety);
    for (const problem of read.problems) io.complain(showProblem(problem, source));
    return read.value === null ? 1 : show(safetyReport(library.safety, read.value), isJson, io);
  }
  if (file !== undefined && /\.ya?ml$/.test(file)) {
    const { library } = await libraryFor(file, values.content, io);
    const asked = askedRatios(values, 'outdoors', library.safety);
    if (typeof asked !== 'string') return adultsOfDay(file, library.safety, asked, isJson, io);
    io.complain(asked);
    return 2;
  }
  if (file === undefined || values.pupils === undefined) {
    io.complain(safetyWords.adultsNeeds());
    return 2;
  }
  const read = await readPlan(file, values.content, io);
  if (read === null) return 1;
  const group = groupOf(values, read.plan, read.rules);
  if (typeof group === 'string') {
    io.complain(group);
    return 2;
  }
  return show(lessonReport(read.rules, read.plan, group), isJson, io);
}
