import { slug } from '../../shared/library/slug.ts';
import { bench as benchWords } from '../../shared/words/en/bench.ts';
import { visitFolder as words } from '../../shared/words/en/visit-folder.ts';
import { say } from '../../shared/words/index.ts';
import type { CarriedVisit } from '../../shared/visit-folder/index.ts';
import type { BenchStore, OpenVisit } from '../stores/bench.ts';
import { readPhotosKept } from '../stores/bench-photos.ts';
import { shelve } from '../stores/bench-shelf-in.ts';
import { readFiles } from './open-files.ts';
import { readTextFile } from './read-text-file.ts';
import { saveVisits } from './save-visits.ts';
import type { Told } from './told.ts';

/** Visits in and out of the Bench as files. Where something cannot be done, it throws, and nothing was changed. */
export interface Carrying {
  /** Files chosen or dropped together: their visits come as new ones. */
  readonly open: (files: readonly File[]) => Promise<void>;
  readonly saveVisit: (visit: OpenVisit) => Promise<void>;
  readonly saveShelf: () => Promise<void>;
}

/** A file that may be a lesson by itself: any text, but for what is known to be something else. */
async function mayBeLesson(file: File): Promise<boolean> {
  if (/\.(zip|csv|ya?ml|jpe?g|webp)$/i.test(file.name)) return false;
  const head = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return head[0] !== 0x50 || head[1] !== 0x4b;
}

/** One visit with what it brought, in words. */
function tellOne({ name, files, photos }: CarriedVisit): string {
  const told = {
    files: say(words.openedFiles, { count: files.length }),
    photos: say(words.openedPhotos, { count: photos.size }),
  };
  if (files.length + photos.size === 0) return say(words.opened, { name });
  if (files.length === 0) return say(words.openedWith, { name, what: told.photos });
  if (photos.size === 0) return say(words.openedWith, { name, what: told.files });
  return say(words.openedWith, { name, what: say(words.openedBoth, told) });
}

/** @param report Told what came of it. */
export function createCarrying(bench: BenchStore, report: (told: Told) => void): Carrying {
  const takeIn = async (visits: readonly CarriedVisit[]): Promise<readonly string[]> => {
    const [first, ...others] = visits;
    if (first === undefined) return [];
    const before = new Set(bench.$shelf.get()?.visits.map(({ name }) => name));
    const unkept = await shelve(others);
    await bench.begin(first.name, first.text, { files: first.files, photos: first.photos });
    return [
      others.length === 0
        ? tellOne(first)
        : say(words.openedSeveral, { count: visits.length - unkept.length, name: first.name }),
      ...visits.flatMap(({ name }) => (before.has(name) ? [say(words.sameName, { name })] : [])),
      ...(unkept.length === 0 ? [] : [say(words.notKept, { names: unkept.join(', ') })]),
    ];
  };
  const openLesson = async (file: File): Promise<void> => {
    const text = await readTextFile(file);
    if (text === null) {
      report({ sentences: [say(benchWords.openFileUnfit, { name: file.name })], left: [] });
      return;
    }
    const name = slug(file.name.replace(/\.[^.]*$/, '').normalize('NFC')) || 'lesson';
    report({ sentences: await takeIn([{ name, text, files: [], photos: new Map() }]), left: [] });
  };

  return {
    open: async (files) => {
      const [file] = files;
      if (file === undefined) return;
      if (files.length === 1 && (await mayBeLesson(file))) {
        await openLesson(file);
        return;
      }
      const { visits, sentences, left } = await readFiles(files);
      report({ sentences: [...(await takeIn(visits)), ...sentences], left });
    },
    saveVisit: ({ name, history, files, photos }) => {
      report({ sentences: saveVisits(name, [{ name, text: history.text, files, photos }]), left: [] });
      return Promise.resolve();
    },
    saveShelf: async () => {
      await bench.keepNow();
      const visits: CarriedVisit[] = [];
      const lost: string[] = [];
      for (const { id, name, text, files, photos: names } of bench.$shelf.get()?.visits ?? []) {
        const photos = await readPhotosKept(id, names);
        const count = names.length - photos.size;
        if (count > 0) lost.push(say(words.savedPhotosLost, { count, name }));
        visits.push({ name, text, files, photos });
      }
      const today = new Date().toISOString().slice(0, 10);
      report({ sentences: [...saveVisits(`pitlore-shelf-${today}`, visits), ...lost], left: [] });
    },
  };
}
