import { MOST_FILE_BYTES, MOST_PHOTO_BYTES, type Carried } from '../../../shared/photo/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { photoWords } from '../../../shared/words/en/photo-problems.ts';
import { say, tellNumber } from '../../../shared/words/index.ts';
import type { PictureRefusal, PictureTaken } from './picture-taken.ts';

const KILOBYTE = 1000;
const MEGABYTE = 1_000_000;
/** Digits enough to round nothing. */
const EXACT = 15;

/** Bytes in whole kilobytes, rounded up. @example kilobytes(2_000_000) // '2,000' */
export const kilobytes = (bytes: number): string => tellNumber(Math.ceil(bytes / KILOBYTE), EXACT);

const TOLD = {
  place: words.toldPlace,
  device: words.toldDevice,
  time: words.toldTime,
  'other words': words.toldOther,
} as const satisfies Record<Carried, string>;

/** What a file told beside its picture, and that it is left out. @example tellCarried(['time']) // 'The file said when: that is left out.' */
export function tellCarried(carried: readonly Carried[] | null): string {
  if (carried === null) return words.carriedUnknown;
  if (carried.length === 0) return words.carriedNone;
  const told = (['place', 'device', 'time', 'other words'] as const)
    .filter((each) => carried.includes(each))
    .map((each) => TOLD[each]);
  return say(words.carried, { told: new Intl.ListFormat('en').format(told) });
}

/** What a file has become: its size, and that what it told is left out. */
export const tellTaken = (wasBytes: number, { widthPx, heightPx, bytes, carried }: PictureTaken): string =>
  `${say(words.takenIn, {
    width: tellNumber(widthPx, EXACT),
    height: tellNumber(heightPx, EXACT),
    kilobytes: kilobytes(bytes.length),
    was: kilobytes(wasBytes),
  })} ${tellCarried(carried)}`;

/** Why a file is not taken in: its name, what was expected, what was received, and how to mend it. */
export function tellRefused(name: string, sizeBytes: number, refusal: PictureRefusal): string {
  const values = {
    most: refusal === 'too-large' ? MOST_FILE_BYTES / MEGABYTE : MOST_PHOTO_BYTES / KILOBYTE,
    megabytes: Math.ceil(sizeBytes / MEGABYTE),
  };
  const sentences = (from: Readonly<Record<'expected' | 'received' | 'mend', string>>) => ({
    expected: say(from.expected, values),
    received: say(from.received, values),
    mend: say(from.mend, values),
  });
  const told =
    refusal === 'too-large'
      ? sentences(words.tooLarge)
      : refusal === 'cannot-open'
        ? sentences(words.cannotOpen)
        : refusal === 'too-fine'
          ? sentences(words.tooFine)
          : photoWords.refused(refusal);
  return say(words.refused, { name, ...told });
}
