import { parseArgs } from 'node:util';
import { dropIn } from '../../shared/day/index.ts';
import { dropInWords } from '../../shared/words/en/drop-in.ts';
import type { ExitCode, Io } from './io.ts';

/** What each number may be; more than this is no table at an open day. ASM. */
const LIMITS = {
  'per-hour': { least: 0.1, most: 1000, form: /^\d{1,4}(\.\d{1,3})?$/ },
  minutes: { least: 0.1, most: 240, form: /^\d{1,3}(\.\d{1,3})?$/ },
  places: { least: 1, most: 100, form: /^\d{1,3}$/ },
} as const;

/** `dropin --per-hour N --minutes M --places C [--json]`: how long people wait at a station they drop in on. */
export async function dropin(argv: readonly string[], io: Pick<Io, 'write' | 'complain'>): Promise<ExitCode> {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({
    args: [...argv],
    options: { 'per-hour': text, minutes: text, places: text, json: { type: 'boolean' } },
  });
  const read = (option: keyof typeof LIMITS): number | null => {
    const { least, most, form } = LIMITS[option];
    const written = values[option] ?? '';
    const number = form.test(written) ? Number(written) : Number.NaN;
    if (number >= least && number <= most) return number;
    io.complain(dropInWords.numberUnfit(option, least, most, written));
    return null;
  };
  if (values['per-hour'] === undefined || values.minutes === undefined || values.places === undefined) {
    io.complain(dropInWords.needs());
    return 2;
  }
  const perHour = read('per-hour');
  const minutes = read('minutes');
  const places = read('places');
  if (perHour === null || minutes === null || places === null) return 2;
  const asked = dropIn({ perHour, minutes, places });
  if (values.json === true) {
    io.write(`${JSON.stringify({ perHour, minutes, places, ...asked }, null, 2)}\n`);
    return 0;
  }
  io.write(dropInWords.head(perHour, minutes));
  for (const more of [0, 1, 2]) {
    const { queue, leastPlaces } = dropIn({ perHour, minutes, places: places + more });
    io.write(
      queue === null
        ? dropInWords.grows(places + more, leastPlaces)
        : dropInWords.row(places + more, queue.waitShare, queue.meanWaitMinutes),
    );
  }
  if (asked.queue !== null) io.write(dropInWords.there(asked.queue.meanThere));
  io.write(dropInWords.caution());
  return 0;
}
