import { parseArgs } from 'node:util';
import { checkWorld, swapAnswer } from '../../shared/bartering/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';
import { BANDS, readWorld } from '../../shared/library/index.ts';
import { barterCommandWords } from '../../shared/words/en/barter-command.ts';
import type { ExitCode, Io } from './io.ts';
import { showProblem } from './show-problem.ts';

/**
 * `swap WORLD.yaml [--band B]`: a hand-written gathering solved, `{ solvable, par, chains, example, betterOff }` as JSON;
 * problems go to the other stream. 1 when it cannot be played as it stands.
 */
export async function swap(
  argv: readonly string[],
  io: Pick<Io, 'write' | 'complain' | 'read'>,
): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { band: { type: 'string' } },
  });
  const [file, more] = positionals;
  if (file === undefined || more !== undefined) {
    io.complain(barterCommandWords.swapNeeds(BANDS));
    return 2;
  }
  const band = BANDS.find((known) => known === values.band) ?? null;
  if (values.band !== undefined && band === null) {
    io.complain(barterCommandWords.bandUnknown(values.band, BANDS));
    return 2;
  }
  const text = await io.read(file);
  const { value, problems, place } = readWorld(file, text);
  const checked = value === null ? null : checkWorld(value, band);
  const all = [...problems, ...place(checked?.faults ?? [])];
  for (const problem of all) io.complain(showProblem(problem, text));
  const proof = checked?.proof ?? null;
  if (proof !== null) io.write(`${JSON.stringify(swapAnswer(proof), null, 2)}\n`);
  return hasErrors(all) ? 1 : 0;
}
