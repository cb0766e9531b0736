import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { nearest } from '../../shared/lesson/index.ts';
import { readMakingFigures } from '../../shared/library/read-making-figures.ts';
import {
  CHOICES,
  type Choice,
  hoursReport,
  type HoursQuestion,
  type MakingRequest,
} from '../../shared/making/index.ts';
import { hoursWords, refusalSentence } from '../../shared/words/en/hours.ts';
import type { ExitCode, Io } from './io.ts';
import { showProblem } from './show-problem.ts';

const text = { type: 'string' } as const;
const flag = { type: 'boolean' } as const;

const options = {
  length: text,
  width: text,
  thickness: text,
  fell: text,
  stone: text,
  form: text,
  grinder: text,
  skill: text,
  preform: text,
  extent: text,
  finish: text,
  wood: text,
  axe: text,
  mined: flag,
  list: flag,
  json: flag,
  help: flag,
  content: text,
} as const;

const MEASURED = {
  length: 'lengthMm',
  width: 'widthMm',
  thickness: 'thicknessMm',
  fell: 'diameterCm',
} as const;

type Values = ReturnType<typeof parseArgs<{ options: typeof options }>>['values'];

/** What is asked, or the sentence that says which option is no number. */
function questionOf(values: Values): HoursQuestion | string {
  const measures: { -readonly [Key in (typeof MEASURED)[keyof typeof MEASURED]]?: number } = {};
  for (const option of ['length', 'width', 'thickness', 'fell'] as const) {
    const written = values[option];
    if (written === undefined) continue;
    if (!/^-?\d+(?:\.\d+)?$/.test(written.trim())) return hoursWords.notNumber(option, written);
    measures[MEASURED[option]] = Number(written);
  }
  const chosen: { -readonly [Name in Choice]?: string } = {};
  for (const name of CHOICES) {
    const written = values[name];
    if (written !== undefined) chosen[name] = written;
  }
  const request: MakingRequest = { ...measures, ...chosen, mined: values.mined ?? false };
  return { kind: values.list === true ? 'list' : values.fell === undefined ? 'make' : 'fell', request };
}

/**
 * `hours --length MM --width MM --thickness MM […]`, `hours --fell CM […]`, `hours --list`: what the making model says.
 * 1 where the model refuses, 2 where the command was not understood.
 */
export async function hours(
  argv: readonly string[],
  io: Pick<Io, 'write' | 'complain' | 'read' | 'home'>,
): Promise<ExitCode> {
  const { values, positionals } = parseArgs({ args: [...argv], allowPositionals: true, options });
  if (values.help === true) {
    io.write(hoursWords.help());
    return 0;
  }
  const [stray] = positionals;
  const question = stray === undefined ? questionOf(values) : hoursWords.tooMuch(stray);
  if (typeof question === 'string') {
    io.complain(question);
    return 2;
  }
  const file = join(values.content ?? join(io.home, 'content'), 'figures', 'making-hours.yaml');
  const source = await io.read(file);
  const read = readMakingFigures(file, source);
  for (const problem of read.problems) io.complain(showProblem(problem, source));
  if (read.value === null) return 1;
  const report = hoursReport(read.value.figures, question);
  switch (report.kind) {
    case 'refused':
      for (const refusal of report.refusals) {
        const near = refusal.kind === 'unknown' ? nearest(refusal.received, refusal.known) : null;
        io.complain(refusalSentence(refusal, near));
      }
      return 1;
    case 'list':
      io.write(
        values.json === true ? `${JSON.stringify(report.list, null, 2)}\n` : hoursWords.list(report.list),
      );
      return 0;
    case 'figures':
      io.write(
        values.json === true
          ? `${JSON.stringify(report.figures, null, 2)}\n`
          : hoursWords.figures(report.figures),
      );
      return 0;
    default:
      return report satisfies never;
  }
}
