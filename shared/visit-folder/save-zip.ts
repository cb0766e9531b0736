import { readMe } from '../words/en/visit-folder.ts';
import { writeUtf8, writeZip, type Limits } from '../zip/index.ts';
import type { CarriedVisit } from './carried-visit.ts';
import { folderOfShelf, type PlacedVisit } from './folder-of-shelf.ts';
import { siteNamed, sitesOf } from './sites-of.ts';
import { tellApart } from './tell.ts';

/** Visits as one zip, and where in it each of them lies. */
export interface SavedZip {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly visits: readonly PlacedVisit[];
}

/** The site whose finds a visit goes by without carrying them. */
function goesBy({ text, files, photos }: CarriedVisit): string | null {
  const id = siteNamed(text);
  return id === '' || sitesOf(files, photos).some((site) => site.id === id) ? null : id;
}

/**
 * Visits as one zip: a content folder, and a note that says what it is and where to put it. The same visits give the same bytes.
 *
 * @example saveZip([{ name: 'two-pits', text: '---\n', files: [], photos: new Map() }]).visits[0]?.folder // ''
 */
export function saveZip(visits: readonly CarriedVisit[]): SavedZip {
  const folder = folderOfShelf(visits);
  const noted = folder.visits.map((placed) => ({
    name: placed.visit.name,
    folder: placed.folder,
    why: tellApart(placed),
    goesBy: goesBy(placed.visit),
  }));
  const note = readMe(
    noted,
    folder.files.map(({ path }) => path),
  ).join('\n');
  return {
    bytes: writeZip([{ path: 'READ-ME.txt', bytes: writeUtf8(note) }, ...folder.files]),
    visits: folder.visits,
  };
}

const weightOf = ({ text, files, photos }: CarriedVisit): number =>
  [text, ...files.map((file) => file.text)].reduce((sum, each) => sum + writeUtf8(each).length, 0) +
  [...photos.values()].reduce((sum, { length }) => sum + length, 0);

/** Visits in as few lots as can each be opened at once, in the order given. */
export function lotsWithin(
  visits: readonly CarriedVisit[],
  limits: Limits,
): readonly (readonly CarriedVisit[])[] {
  const lots: CarriedVisit[][] = [];
  let [bytes, files] = [0, 0];
  for (const visit of visits) {
    const [weight, count] = [weightOf(visit), 1 + visit.files.length + visit.photos.size];
    const lot = lots.at(-1);
    // One is left for the note.
    const isFull = bytes + weight > limits.bytes || files + count > limits.files - 1;
    if (lot === undefined || isFull) {
      lots.push([visit]);
      [bytes, files] = [weight, count];
    } else {
      lot.push(visit);
      [bytes, files] = [bytes + weight, files + count];
    }
  }
  return lots;
}
