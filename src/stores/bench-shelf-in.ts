import { KEPT_VERSION } from '../../shared/bench/index.ts';
import type { CarriedVisit } from '../../shared/visit-folder/index.ts';
import { dropPhotos, keepPhotos } from './bench-photos.ts';
import { keepVisit } from './bench-shelf.ts';

/** Puts visits on the shelf, each as a new one; gives the names of those that the device would not keep. */
export async function shelve(visits: readonly CarriedVisit[]): Promise<readonly string[]> {
  const unkept: string[] = [];
  for (const { name, text, files, photos } of visits) {
    const id = crypto.randomUUID?.() ?? `${Date.now()}-${name}`;
    const fault =
      (await keepPhotos(id, photos)) ??
      (await keepVisit({
        mark: 'pitlore-visit',
        version: KEPT_VERSION,
        id,
        name,
        text,
        files,
        photos: [...photos.keys()],
        taking: null,
        past: [],
        changed: new Date().toISOString(),
      }));
    if (fault === null) continue;
    unkept.push(name);
    await dropPhotos(id);
  }
  return unkept;
}
