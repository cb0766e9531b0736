import type { SafetyRules } from '../../shared/safety/index.ts';
import { safetyCommandWords } from '../../shared/words/en/safety.ts';
import { comersFrom } from './comers.ts';
import type { ExitCode, Io } from './io.ts';
import { fromLesson, fromSituation, type Judged } from './situation-from.ts';

interface Asked {
  readonly values: Parameters<typeof comersFrom>[0] & {
    readonly situation?: string | undefined;
    readonly content?: string | undefined;
  };
  readonly positionals: readonly string[];
  /** The sentence where neither a lesson nor a situation is named, or not enough beside it. */
  readonly needs: string;
}

/** The situation a command asks about, from a lesson or from a file of its own; an exit code where there is none. */
export async function judge({ values, positionals, needs }: Asked, io: Io): Promise<Judged | ExitCode> {
  const [file, more] = positionals;
  const complain = (sentence: string): ExitCode => {
    io.complain(sentence);
    return 2;
  };
  if (values.situation !== undefined) {
    const { pupils, ages, framework, local, setting } = values;
    if ([file, pupils, ages, framework, local, setting].some((said) => said !== undefined))
      return complain(safetyCommandWords.onlySituation());
    const judged = await fromSituation(values.situation, values.content, io);
    return judged === 'refused' ? 1 : judged;
  }
  if (file === undefined || more !== undefined) return complain(needs);
  if (!file.endsWith('.md')) return complain(safetyCommandWords.notALesson(file));
  const judged = await fromLesson(
    file,
    (rules: SafetyRules) => {
      const comers = comersFrom(values, rules);
      if (typeof comers !== 'string') return comers;
      io.complain(comers);
      return null;
    },
    values.content,
    io,
  );
  return judged === 'refused' ? 1 : judged === 'unclear' ? 2 : judged;
}
