import {
  addSite,
  putPhoto,
  siteFileOf,
  type OwnFiles,
  type PhotoToPut,
} from '../../../shared/bench/index.ts';
import { MOST_PHOTOS_BYTES } from '../../../shared/photo/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { BenchStore } from '../../stores/bench.ts';
import type { Checker } from '../checker.ts';
import { kilobytes } from './tell-taken.ts';

/**
 * Puts a photograph into the open visit. A site that is not the lead's own becomes so first: its files are copied.
 *
 * @returns Why it is not in, in words; null where it is.
 */
export async function putInVisit(
  bench: BenchStore,
  checker: Checker,
  photo: PhotoToPut,
): Promise<string | null> {
  const before = bench.$visit.get();
  if (before === null) return words.needsVisit;
  const isOwn = siteFileOf(before.files, photo.site) !== null;
  const site = isOwn ? null : await checker.site(photo.site);
  // The visit may have been written to, or put away, while the site was fetched.
  const visit = bench.$visit.get();
  if (visit?.id !== before.id) return words.needsVisit;
  if (bench.$keeping.get() === 'elsewhere') return words.elsewhere;
  const own: OwnFiles = { files: visit.files, photos: visit.photos };
  const put = putPhoto(site === null ? own : addSite(own, site), photo);
  if (put.own !== null) {
    bench.putFiles(put.own);
    return null;
  }
  switch (put.fault) {
    case 'too-heavy':
      return say(words.tooHeavy, { most: kilobytes(MOST_PHOTOS_BYTES) });
    case 'unwritten':
      return words.unwritten;
    case 'no-site':
      return say(words.noSite, { site: photo.site });
    default:
      return put.fault satisfies never;
  }
}
