import { createStore, del, entries, set } from 'idb-keyval';
import { readKept, type KeptVisit } from '../../shared/bench/index.ts';
import { dropPhotos } from './bench-photos.ts';
import { faultOf, type KeepFault } from './keep-fault.ts';

/** All visits on this device, newest first, and how many records could not be read (they are left where they are). */
export interface Shelf {
  readonly visits: readonly KeptVisit[];
  readonly later: number;
  readonly unreadable: number;
}

const store = (): ReturnType<typeof createStore> => createStore('pitlore-bench', 'visits');

/** Everything kept; null where the browser keeps nothing. */
export async function readShelf(): Promise<Shelf | null> {
  try {
    const read = (await entries<string, unknown>(store())).map(([, value]) => readKept(value));
    const faults = read.flatMap((each) => (each.visit === null ? [each.fault] : []));
    return {
      visits: read
        .flatMap(({ visit }) => (visit === null ? [] : [visit]))
        .toSorted((a, b) => (a.changed < b.changed ? 1 : -1)),
      later: faults.filter((fault) => fault === 'later').length,
      unreadable: faults.filter((fault) => fault === 'unreadable').length,
    };
  } catch {
    return null;
  }
}

/** Keeps a visit; null where that went well. */
export async function keepVisit(visit: KeptVisit): Promise<KeepFault | null> {
  try {
    await set(visit.id, visit, store());
    return null;
  } catch (error) {
    return faultOf(error);
  }
}

/** Takes a visit off the shelf. */
export async function dropVisit(id: string): Promise<void> {
  try {
    await del(id, store());
    await dropPhotos(id);
  } catch {
    // A browser that keeps nothing has nothing to take away.
  }
}
