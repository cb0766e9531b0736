import { MOST_FILE_BYTES, MOST_PHOTO_BYTES, type Carried } from '../../../shared/photo/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { photoWords } from '../../../shared/words/en/photo-problems.ts';
import { say } from '../../../shared/words/index.ts';
import type { PictureRefusal, PictureTaken } from './picture-taken.ts';

const KILOBYTE = 1000;
const MEGABYTE = 1_000_000;

/** Bytes as whole kilobytes, rounded up. */
export const kilobytes = (bytes: number): number => Math.ceil(bytes / KILOBYTE);

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

/** That a picture is ready, with its size, and what its file told. */
export const tellTaken = (name: string, { widthPx, heightPx, bytes, carried }: PictureTaken): string =>
  `${say(words.takenIn, { name, width: widthPx, height: heightPx, kilobytes: kilobytes(bytes.length) })} ${tellCarried(carried)}`;

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
