import { kindNames, starterOf } from '../../shared/activities/index.ts';
import { writeBlock } from '../../shared/bench/index.ts';
import type { Library } from '../../shared/library/index.ts';
import type { Offers } from './protocol.ts';

/** What a lesson may point to in a library, each with a few words that say what it is. */
export function offersOf({ sites, vocabulary, curricula, sources }: Library): Offers {
  const typeName = (id: string): string => vocabulary.objectTypes.find((type) => type.id === id)?.label ?? id;
  return {
    sites: sites.map((site) => ({
      value: site.id,
      means: site.name,
      pits: site.pits.map((pit) => ({ value: pit.id, means: String(pit.finds.length) })),
      finds: site.pits.flatMap((pit) =>
        pit.finds.map((find) => ({
          value: find.id,
          means: typeName(find.attributes['object-type']),
          lengthMm: find.lengthMm,
        })),
      ),
      starters: Object.fromEntries(kindNames.map((kind) => [kind, writeBlock(kind, starterOf(kind, site))])),
    })),
    values: Object.fromEntries(
      vocabulary.attributes.map(({ id, values }) => [
        id,
        values.map((term) => ({ value: term.id, means: term.hint === '' ? term.label : term.hint })),
      ]),
    ),
    outcomes: curricula.frameworks.flatMap((framework) =>
      framework.outcomes.map(({ id, summary }) => ({ value: id, means: summary })),
    ),
    sources: sources.map(({ id, usedFor }) => ({ value: id, means: usedFor })),
  };
}
