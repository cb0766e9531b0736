import type { Find } from '../library/index.ts';
import type { DraftContext } from './draft.ts';

/** Types that are an axe or were one, the fullest first. */
const AXES: readonly string[] = ['polished-axe', 'axe-roughout', 'ground-edge-fragment'];

/** The finds that are axes or pieces of them: pinned ones, whole ones and sound records first. */
export function axesOf({ finds, pins, doubtful }: DraftContext, types = AXES): readonly Find[] {
  const rank = (find: Find): number =>
    (pins.has(find.id) ? 0 : 100) +
    types.indexOf(find.attributes['object-type']) * 10 +
    (find.attributes.state === 'broken' ? 4 : 0) +
    (doubtful.has(find.id) ? 2 : 0);
  return finds
    .filter(({ attributes, role }) => types.includes(attributes['object-type']) && role === 'evidence')
    .toSorted((a, b) => rank(a) - rank(b));
}
