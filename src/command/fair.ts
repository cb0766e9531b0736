import { parseArgs } from 'node:util';
import { CLASS_SIZES, fairAnswer, gatheringGoods } from '../../shared/bartering/index.ts';
import { BANDS } from '../../shared/library/index.ts';
import { barterCommandWords } from '../../shared/words/en/barter-command.ts';
import type { ExitCode, Io } from './io.ts';

/** `fair --pupils N --band B [--seed S]`: want cards for a whole class, with `{ possible, bestTotal }`, as JSON. */
export async function fair(argv: readonly string[], io: Pick<Io, 'write' | 'complain'>): Promise<ExitCode> {
  const { values } = parseArgs({
    args: [...argv],
    options: {
      pupils: { type: 'string', default: '' },
      band: { type: 'string', default: '' },
      seed: { type: 'string', default: '1' },
    },
  });
  const { least, most } = CLASS_SIZES;
  const pupils = /^\d+$/.test(values.pupils) ? Number(values.pupils) : Number.NaN;
  if (!(pupils >= least && pupils <= most)) {
    io.complain(barterCommandWords.pupilsUnfit(values.pupils, least, most));
    return 2;
  }
  const band = BANDS.find((known) => known === values.band);
  if (band === undefined) {
    io.complain(barterCommandWords.bandUnknown(values.band, BANDS));
    return 2;
  }
  const swappable = gatheringGoods().filter((good) => !good.onlyGiven && good.spoilsAfter === null);
  const answer = fairAnswer(
    pupils,
    band,
    values.seed,
    swappable.map(({ id }) => id),
  );
  io.write(`${JSON.stringify(answer, null, 2)}\n`);
  return await Promise.resolve(0);
}
