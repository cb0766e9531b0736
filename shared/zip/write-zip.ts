import { zipSync } from 'fflate';
import type { FolderFile } from './read-zip.ts';

/** The first day a zip can tell of, as the clock on the wall says it: the same bytes on every day and in every place. */
const FIRST_DAY = '1980-01-01T12:00:00';

/** Pictures are packed already. */
const isPacked = (path: string): boolean => /\.(jpe?g|png|webp)$/i.test(path);

/**
 * A zip of these files, in their order: the same files give the same bytes.
 *
 * @throws RangeError where two files have one path: one would lie over the other.
 */
export function writeZip(files: readonly FolderFile[]): Uint8Array<ArrayBuffer> {
  const entries = Object.fromEntries(
    files.map(({ path, bytes }) => [
      path,
      [bytes, { mtime: FIRST_DAY, level: isPacked(path) ? 0 : 6 }] as [
        Uint8Array,
        { mtime: string; level: 0 | 6 },
      ],
    ]),
  );
  if (Object.keys(entries).length < files.length)
    throw new RangeError(`two files of one path: ${files.map(({ path }) => path).join(', ')}`);
  return zipSync(entries);
}
