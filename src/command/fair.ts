import { parseArgs } from 'node:util';
import { CLASS_SIZES, fairAnswer, gatheringGoods } from '../../shared/bartering/index.ts';
import { BANDS } from '../../shared/library/bands.ts';

const USAGE = `pitlore fair --pupils ${CLASS_SIZES.least}-${CLASS_SIZES.most} --band ${BANDS.join('|')} --seed TEXT\n`;

/**
 * Deals want cards for a whole class: writes the deal with `{ possible, bestTotal }` as JSON.
 * 0 when dealt, 2 when the command was not understood.
 */
export async function fair(
  argv: readonly string[],
  write: (text: string) => void,
  complain: (text: string) => void,
  _read: (path: string) => Promise<string>,
): Promise<number> {
  await Promise.resolve();
  const goods = gatheringGoods()
    .filter((good) => !good.onlyGiven && good.spoilsAfter === null)
    .map(({ id }) => id);
  try {
    const options = {
      pupils: { type: 'string' },
      band: { type: 'string' },
      seed: { type: 'string', default: '1' },
    } as const;
    const { values } = parseArgs({ args: [...argv], options });
    const pupils = Number(values.pupils);
    const band = BANDS.find((known) => known === values.band);
    if (!Number.isInteger(pupils) || pupils < CLASS_SIZES.least || pupils > CLASS_SIZES.most) {
      throw new Error(
        `--pupils takes a whole number from ${CLASS_SIZES.least} to ${CLASS_SIZES.most}, not "${values.pupils ?? ''}"`,
      );
    }
    if (band === undefined)
      throw new Error(`--band takes one of ${BANDS.join(', ')}, not "${values.band ?? ''}"`);
    write(`${JSON.stringify(fairAnswer(pupils, band, values.seed, goods), null, 2)}\n`);
    return 0;
  } catch (cause) {
    complain(`${cause instanceof Error ? cause.message : String(cause)}\n${USAGE}`);
    return 2;
  }
}
