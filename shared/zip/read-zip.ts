import { readList } from './read-list.ts';
import { unpack, type Unfit } from './unpack.ts';

/** A file with its place in a folder: `lessons/two-pits.md`. */
export interface FolderFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** How much is unpacked at most. */
export interface Limits {
  readonly bytes: number;
  readonly files: number;
}

/** Why nothing of a zip is unpacked, with what it tells of itself where that is too much. */
export type ZipFault =
  | { readonly fault: 'no-zip' | 'broken' | 'larger-than-told' }
  | { readonly fault: 'too-large' | 'too-many'; readonly received: number };

export interface ZipRead {
  readonly files: readonly FolderFile[];
  /** Files that were wanted and cannot be had. */
  readonly unfit: readonly { readonly path: string; readonly why: Exclude<Unfit, 'larger-than-told'> }[];
  /** Files that were not asked for: not unpacked. */
  readonly others: readonly string[];
  readonly fault: ZipFault | null;
}

const none = (fault: ZipFault): ZipRead => ({ files: [], unfit: [], others: [], fault });

/** True where bytes begin as a zip does, be it an empty one. */
export const looksLikeZip = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 &&
  bytes[1] === 0x4b &&
  ((bytes[2] === 3 && bytes[3] === 4) || (bytes[2] === 5 && bytes[3] === 6));

/**
 * Unpacks the wanted files of a zip. What it tells of itself is held against the limits before anything is unpacked, and a
 * zip that tells of less than it holds is not unpacked at all: that is how one is made that fills a device.
 *
 * @param isWanted Whether a file at this path is to be unpacked; folders are never asked for.
 */
export function readZip(zip: Uint8Array, limits: Limits, isWanted: (path: string) => boolean): ZipRead {
  if (!looksLikeZip(zip)) return none({ fault: 'no-zip' });
  const all = readList(zip);
  if (all === null) return none({ fault: 'broken' });
  if (all.length > limits.files) return none({ fault: 'too-many', received: all.length });
  const listed = all.filter(({ path }) => !/[/\\]$/.test(path));
  const wanted = listed.filter(({ path }) => isWanted(path));
  const bytes = wanted.reduce((sum, { size }) => sum + size, 0);
  if (bytes > limits.bytes) return none({ fault: 'too-large', received: bytes });
  const files: FolderFile[] = [];
  const unfit: ZipRead['unfit'][number][] = [];
  for (const each of wanted) {
    const unpacked = unpack(zip, each);
    if (unpacked === 'larger-than-told') return none({ fault: 'larger-than-told' });
    if (typeof unpacked === 'string') unfit.push({ path: each.path, why: unpacked });
    else files.push({ path: each.path, bytes: unpacked });
  }
  return {
    files,
    unfit,
    others: listed.filter((each) => !wanted.includes(each)).map(({ path }) => path),
    fault: null,
  };
}
