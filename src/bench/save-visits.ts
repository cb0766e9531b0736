import { lotsWithin, MOST_AT_ONCE, saveZip, tellApart } from '../../shared/visit-folder/index.ts';
import type { CarriedVisit } from '../../shared/visit-folder/index.ts';
import { say } from '../../shared/words/index.ts';
import { visitFolder as words } from '../../shared/words/en/visit-folder.ts';
import { saveFile } from './save-file.ts';

/**
 * Saves visits as one zip, or as several where one would be more than is opened at once; gives what there is to say of it.
 *
 * @param name What the zip is called, without its ending.
 */
export function saveVisits(name: string, visits: readonly CarriedVisit[]): readonly string[] {
  const lots = lotsWithin(visits, MOST_AT_ONCE);
  const files: string[] = [];
  const apart: string[] = [];
  for (const [index, lot] of lots.entries()) {
    const zip = saveZip(lot);
    const file = lots.length === 1 ? `${name}.zip` : `${name}-${index + 1}.zip`;
    saveFile(file, zip.bytes, 'application/zip');
    files.push(file);
    apart.push(...zip.visits.flatMap((placed) => tellApart(placed) ?? []));
  }
  const [file] = files;
  if (file === undefined) return [];
  const saved =
    files.length === 1 ? say(words.saved, { file }) : say(words.savedSeveral, { files: files.join(', ') });
  return [saved, ...apart];
}
