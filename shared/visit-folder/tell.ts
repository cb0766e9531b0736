import { say } from '../words/index.ts';
import { visitFolder as words } from '../words/en/visit-folder.ts';
import type { PlacedVisit } from './folder-of-shelf.ts';

/** Why a visit of a shelf lies apart, as a sentence; null where it lies with the others. */
export function tellApart({ visit: { name }, folder, apart }: PlacedVisit): string | null {
  switch (apart?.why) {
    case undefined:
      return null;
    case 'name':
      return say(words.apartName, { name, folder });
    case 'differs':
      return say(words.apartDiffers, { name, folder, site: apart.site, other: apart.other });
    case 'unnamed':
      return say(words.apartUnnamed, { name, folder, files: apart.files.join(', ') });
    default:
      return apart satisfies undefined;
  }
}
