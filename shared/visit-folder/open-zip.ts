import { readZip, type ZipFault } from '../zip/index.ts';
import { MOST_AT_ONCE } from './limits.ts';
import {
  isPartOfVisit,
  leftUnread,
  visitsOfFolder,
  type FolderRead,
  type WhyLeft,
} from './visits-of-folder.ts';

/** Why a file of a zip is in no visit. */
export type WhyLeftOfZip = WhyLeft | 'locked' | 'packed-otherwise' | 'damaged';

/** The visits of a zip and what of it was left out; where the zip as a whole is not taken, why. */
export interface ZipOpened {
  readonly visits: FolderRead['visits'];
  readonly left: readonly { readonly path: string; readonly why: WhyLeftOfZip }[];
  readonly fault: ZipFault | null;
}

/**
 * The visits of a zip: ours, or one of a content folder made by hand. Only what is part of a visit is unpacked.
 *
 * @example openZip(new Uint8Array()).fault // { fault: 'no-zip' }
 */
export function openZip(bytes: Uint8Array): ZipOpened {
  const { files, unfit, others, fault } = readZip(bytes, MOST_AT_ONCE, isPartOfVisit);
  const { visits, left } = visitsOfFolder(files);
  return { visits, left: [...unfit, ...left, ...leftUnread(others)], fault };
}
