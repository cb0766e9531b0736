import type { ContentFile, PhotoFiles } from '../library/index.ts';
import type { Taking } from './taking.ts';

/** The lead's own sites, finds and photographs, which lie over those of the site; photographs by name. */
export interface OwnFiles {
  readonly files: readonly ContentFile[];
  readonly photos: PhotoFiles;
  /** The last finds list taken in; null where there is none to take back. */
  readonly taking?: Taking | null;
}

/** Nothing of one's own. */
export const NO_FILES: OwnFiles = { files: [], photos: new Map() };
