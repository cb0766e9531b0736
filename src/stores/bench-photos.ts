import { createStore, delMany, getMany, keys, setMany } from 'idb-keyval';
import type { PhotoFiles } from '../../shared/library/index.ts';
import { faultOf, type KeepFault } from './keep-fault.ts';

// A store of its own: visits are written at every rest of typing, photographs once.
const store = (): ReturnType<typeof createStore> => createStore('pitlore-bench-photos', 'photos');

const keyOf = (visit: string, name: string): string => `${visit}/${name}`;

/** The photographs of a visit by name; those that the browser no longer has are missing. */
export async function readPhotosKept(visit: string, names: readonly string[]): Promise<PhotoFiles> {
  if (names.length === 0) return new Map();
  try {
    const found = await getMany<unknown>(
      names.map((name) => keyOf(visit, name)),
      store(),
    );
    return new Map(
      names.flatMap((name, index) => {
        const bytes = found[index];
        return bytes instanceof Uint8Array ? [[name, bytes] as const] : [];
      }),
    );
  } catch {
    return new Map();
  }
}

/** Keeps photographs of a visit, all or none; null where that went well. */
export async function keepPhotos(visit: string, photos: PhotoFiles): Promise<KeepFault | null> {
  if (photos.size === 0) return null;
  try {
    await setMany(
      [...photos].map(([name, bytes]) => [keyOf(visit, name), bytes]),
      store(),
    );
    return null;
  } catch (error) {
    return faultOf(error);
  }
}

/** Takes the photographs of a visit away, but for those it still has. */
export async function dropPhotos(visit: string, but: ReadonlySet<string> = new Set()): Promise<void> {
  try {
    const all = await keys<string>(store());
    const gone = all.filter((key) => key.startsWith(`${visit}/`) && !but.has(key.slice(visit.length + 1)));
    if (gone.length > 0) await delMany(gone, store());
  } catch {
    // A browser that keeps nothing has nothing to take away.
  }
}
