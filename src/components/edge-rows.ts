import { typesShown, type Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { edgeOfType, EXPOSURES } from '../../shared/safety/index.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { typeLabel } from './type-label.ts';

const words = catalogues.en.safetyPapers;

/** A class of edges that a lesson shows. */
export interface EdgeRow {
  readonly className: string;
  readonly types: string;
  /** From which age, one for each of `EXPOSURES`. */
  readonly ages: readonly string[];
}

/** The classes of edges of what a lesson shows, blunt to sharp, with the youngest ages; none where nothing cuts. */
export function edgeRows(plan: Plan, library: Library): readonly EdgeRow[] {
  const { safety } = library;
  const shown = typesShown(plan);
  return safety.edges.flatMap(({ id, name }): readonly EdgeRow[] => {
    const types = shown.filter((type) => edgeOfType(safety, type) === id);
    if (types.length === 0) return [];
    return [
      {
        className: name,
        types: types.map((type) => typeLabel(library, type)).join(', '),
        ages: EXPOSURES.map((exposure) => {
          const age = safety.minimumAges[id][exposure];
          return age === null ? words.neverAge : say(words.fromAge, { age });
        }),
      },
    ];
  });
}
