import type { Attribute, Library } from '../../library/library.ts';
import type { Asks } from '../kind.ts';
import type { SortActivity } from './activity.ts';

/** What sorting by an attribute asks, whatever the finds. */
const byAttribute: Readonly<Record<Attribute, readonly string[]>> = {
  material: ['materials', 'properties'],
  'made-by': ['finds-as-evidence'],
  'used-for': ['finds-as-evidence', 'fit-for-use'],
  age: ['finds-as-evidence'],
  state: ['properties'],
  'object-type': [],
};

/** Fewest named rocks that make a sort of rocks. ASM, our judgement. */
const FEWEST_ROCKS = 3;

/** Fewest trays of dated things that set one period against another. */
const FEWEST_PERIODS = 2;

/**
 * What a sort asks. Trays of one's own name no rule beforehand, so they are evidence of nothing in particular.
 */
export function asksSort(activity: SortActivity, library: Library): Asks {
  const things = activity.finds.length;
  if (activity.ownTrays) return { met: [], things };
  const rocks = library.vocabulary.materials.filter(({ isRock }) => isRock).map(({ id }) => id);
  const named = new Set(
    activity.finds.map(({ attributes }) => attributes.material).filter((id) => rocks.includes(id)),
  );
  const hasRocks = activity.by === 'material' && named.size >= FEWEST_ROCKS;
  const dated = new Set(
    activity.finds
      .filter(({ attributes }) => attributes.age !== 'natural')
      .flatMap(({ homes }) => homes.filter(({ by }) => by === 'record').map(({ tray }) => tray)),
  );
  const hasPeriods = activity.by === 'age' && dated.size >= FEWEST_PERIODS;
  return {
    met: [
      'criteria-named',
      ...byAttribute[activity.by],
      ...(hasRocks ? ['rocks'] : []),
      ...(hasPeriods ? ['periods'] : []),
    ],
    things,
  };
}
