import { basename } from 'node:path';
import { lessonDay } from '../../shared/lesson-day/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { dayCommandWords } from '../../shared/words/en/day-command.ts';
import type { ExitCode, Io } from './io.ts';
import { readPlan } from './lesson-group.ts';

/** A class, where nobody says how many. ASM. */
const PUPILS = '30';
const MOST_PUPILS = 200;

/** What `day --from-lesson` is asked. */
export interface FromLesson {
  readonly file: string;
  readonly pupils: string | undefined;
  readonly out: string | undefined;
}

/**
 * `day --from-lesson FILE [--pupils N] [--out DAY.yaml]`: a day file made from a lesson, its stand-ins called so; never over a
 * file that is there. 1 where the lesson has errors, or nothing that can be a station.
 */
export async function dayFromLesson({ file, pupils = PUPILS, out }: FromLesson, io: Io): Promise<ExitCode> {
  if (!/^[1-9]\d{0,2}$/.test(pupils) || Number(pupils) > MOST_PUPILS) {
    io.complain(dayCommandWords.pupilsUnfit(pupils, MOST_PUPILS));
    return 2;
  }
  const read = await readPlan(file, undefined, io);
  if (read === null) return 1;
  const made = lessonDay(read.rules, read.plan, { file: basename(file), pupils: Number(pupils), taken: [] });
  for (const said of made.leftOut) io.complain(said);
  if (made.text === null) return 1;
  if (out === undefined) {
    io.write(made.text);
    return 0;
  }
  if (await io.exists(out)) {
    io.complain(commandWords.fileExists(out));
    return 1;
  }
  await io.save(out, made.text);
  io.write(dayCommandWords.madeFrom(out));
  return 0;
}
