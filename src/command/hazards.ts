import { parseArgs } from 'node:util';
import { lessonReport, lessonSetting } from '../../shared/compile/index.ts';
import { youngestAge } from '../../shared/library/index.ts';
import { inOrder, plainSituation } from '../../shared/safety/index.ts';
import { safetyWords } from '../../shared/words/en/safety.ts';
import type { ExitCode, Io } from './io.ts';
import { readPlan } from './lesson-group.ts';

/** `hazards FILE [--json]`: what a lesson commonly brings, with the controls strongest first, and how each is known. */
export async function hazards(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { json: { type: 'boolean' }, content: { type: 'string' } },
  });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(safetyWords.hazardsNeeds());
    return 2;
  }
  const read = await readPlan(file, values.content, io);
  if (read === null) return 1;
  const { plan, rules } = read;
  const group = plainSituation(0, youngestAge(plan.bands), [], lessonSetting(plan));
  const rows = lessonReport(rules, plan, group).hazards.map((hazard) => ({
    ...hazard,
    controls: inOrder(hazard.controls),
  }));
  io.write(
    values.json === true
      ? `${JSON.stringify(rows, null, 2)}\n`
      : `${rules.caution.short} ${rules.caution.neverLine}\n\n${safetyWords.hazards(rows)}`,
  );
  return 0;
}
