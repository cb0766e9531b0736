import { parseArgs } from 'node:util';
import { checkWorld, swapAnswer } from '../../shared/bartering/index.ts';
import { BANDS, type Band } from '../../shared/library/bands.ts';
import { readWorld, toldProblem } from '../loaders/read-world.ts';

const USAGE = `pitlore swap WORLD.yaml [--band ${BANDS.join('|')}]\n`;

/**
 * Solves a hand-written gathering: writes `{ solvable, par, chains, example, betterOff }` as JSON, complains of what is
 * wrong with the file. 0 when it can be played, 1 when something is wrong, 2 when the command was not understood.
 */
export async function swap(
  argv: readonly string[],
  write: (text: string) => void,
  complain: (text: string) => void,
  read: (path: string) => Promise<string>,
): Promise<number> {
  let file: string | undefined;
  let band: Band | null = null;
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      options: { band: { type: 'string' } },
      allowPositionals: true,
    });
    const named = BANDS.find((known) => known === values.band);
    if (values.band !== undefined && named === undefined)
      throw new Error(`no band is called "${values.band}"`);
    if (positionals.length !== 1) throw new Error('name one world file');
    band = named ?? null;
    file = positionals[0];
  } catch (cause) {
    complain(`${cause instanceof Error ? cause.message : String(cause)}\n${USAGE}`);
    return 2;
  }
  let text: string;
  try {
    text = await read(file ?? '');
  } catch {
    complain(`"${file}" cannot be read: check the name and the folder\n`);
    return 2;
  }
  const { world, problems, place } = readWorld(text, file ?? '');
  const checked = world === null ? null : checkWorld(world, band);
  const all = [...problems, ...(checked?.faults ?? []).map(place)];
  for (const problem of all) complain(toldProblem(problem));
  if (checked !== null && checked.proof !== null)
    write(`${JSON.stringify(swapAnswer(checked.proof), null, 2)}\n`);
  return all.some(({ grade }) => grade === 'error') ? 1 : 0;
}
