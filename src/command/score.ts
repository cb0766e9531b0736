import { parseArgs } from 'node:util';
import {
  isKindName,
  isScored,
  playSchemas,
  score as scorePlay,
  tellPlay,
  type PlayOf,
} from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { readYamlFile } from '../../shared/library/index.ts';
import * as z from 'zod';
import type { ExitCode, Io } from './io.ts';
import { showProblem } from './show-problem.ts';

const planFile = z.looseObject({
  format: z.literal('pitlore-plan/1'),
  activities: z.array(z.looseObject({ id: z.string(), kind: z.string() })),
});

/** JSON is YAML 1.2, so one reader gives both their places. */
function readJson<Value>(file: string, text: string, schema: z.ZodType<Value>, io: Io): Value | null {
  const read = readYamlFile(file, text, schema);
  for (const problem of read.problems) io.complain(showProblem(problem, text));
  return read.value;
}

/** `score PLAN.json PLAYS.json`: each play scored, as an array; 1 where a play fits no activity. */
export async function score(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { positionals } = parseArgs({ args: [...argv], allowPositionals: true, options: {} });
  const [planPath, playsPath] = positionals;
  if (planPath === undefined || playsPath === undefined) {
    io.complain(commandWords.scoreNeeds());
    return 2;
  }
  const planText = await io.read(planPath);
  if (readJson(planPath, planText, planFile, io) === null) return 1;
  // A plan is the compiler's own output: its format is checked above, its inside is trusted.
  const plan = JSON.parse(planText) as Plan;
  const playsText = await io.read(playsPath);
  const plays = readJson(playsPath, playsText, z.array(z.looseObject({ activity: z.string() })), io);
  if (plays === null) return 1;
  const results: unknown[] = [];
  let hasFailed = false;
  for (const [index, play] of plays.entries()) {
    const activity = plan.activities.find(({ id }) => id === play.activity);
    if (activity === undefined || !isKindName(activity.kind)) {
      io.complain(
        commandWords.playWithoutActivity(
          playsPath,
          index,
          play.activity,
          plan.activities.map(({ id }) => id),
        ),
      );
      hasFailed = true;
      continue;
    }
    const shaped = playSchemas[activity.kind].safeParse(play);
    if (!shaped.success) {
      io.complain(
        commandWords.playUnfit(
          playsPath,
          index,
          shaped.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`),
        ),
      );
      hasFailed = true;
      continue;
    }
    if (!isScored(activity)) {
      // The play passed the schema of this activity's own kind.
      const told = tellPlay(activity, shaped.data as PlayOf<typeof activity.kind>);
      results.push({ activity: activity.id, kind: activity.kind, isScored: false, told });
      continue;
    }
    // The play passed the schema of this activity's own kind.
    const result = scorePlay(activity, shaped.data as PlayOf<typeof activity.kind>);
    results.push({
      activity: activity.id,
      kind: activity.kind,
      score: result.score,
      guess: result.guess,
      working: result.working,
    });
  }
  io.write(`${JSON.stringify(results, null, 2)}\n`);
  return hasFailed ? 1 : 0;
}
