import { parseArgs } from 'node:util';
import { lessonReport, lessonSetting } from '../../shared/compile/index.ts';
import { readSituation, youngestAge } from '../../shared/library/index.ts';
import {
  inOrder,
  plainSituation,
  safetyReport,
  type Hazard,
  type SafetyRules,
} from '../../shared/safety/index.ts';
import { safetyWords } from '../../shared/words/en/safety.ts';
import type { ExitCode, Io } from './io.ts';
import { readPlan } from './lesson-group.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

interface Found {
  readonly hazards: readonly Hazard[];
  readonly rules: SafetyRules;
}

async function ofLesson(
  file: string | undefined,
  content: string | undefined,
  io: Io,
): Promise<Found | ExitCode> {
  if (file === undefined) {
    io.complain(safetyWords.hazardsNeeds());
    return 2;
  }
  const read = await readPlan(file, content, io);
  if (read === null) return 1;
  const { plan, rules } = read;
  const group = plainSituation(0, youngestAge(plan.bands), [], lessonSetting(plan));
  return { rules, hazards: lessonReport(rules, plan, group).hazards };
}

async function ofSituation(file: string, content: string | undefined, io: Io): Promise<Found | ExitCode> {
  const source = await io.read(file);
  const rules = (await libraryFor(file, content, io)).library.safety;
  const read = readSituation(file, source, rules);
  for (const problem of read.problems) io.complain(showProblem(problem, source));
  return read.value === null ? 1 : { rules, hazards: safetyReport(rules, read.value).hazards };
}

/**
 * `hazards FILE [--json]`, `hazards --situation FILE.yaml [--json]`: what a lesson or a visit commonly brings, with the
 * controls strongest first, and how each is known.
 */
export async function hazards(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { json: { type: 'boolean' }, situation: { type: 'string' }, content: { type: 'string' } },
  });
  const found =
    values.situation === undefined
      ? await ofLesson(positionals[0], values.content, io)
      : await ofSituation(values.situation, values.content, io);
  if (typeof found === 'number') return found;
  const { rules } = found;
  const rows = found.hazards.map((hazard) => ({ ...hazard, controls: inOrder(hazard.controls) }));
  io.write(
    values.json === true
      ? `${JSON.stringify(rows, null, 2)}\n`
      : `${rules.caution.short} ${rules.caution.neverLine}\n\n${safetyWords.hazards(rows)}`,
  );
  return 0;
}
