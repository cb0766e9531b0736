import { comesBefore, type Precedence, type Step } from './precedence.ts';

/**
 * The same order among fewer steps: what a left-out step implied between two others is kept.
 *
 * Arrows are the fewest that imply all the rest (the transitive reduction: Aho, Garey & Ullman 1972, SIAM J. Comput. 1: 131-137).
 * @throws RangeError when an id is not among the steps.
 * @example restrictSteps(precedence, ['find-nodule', 'grind']) // [{ id: 'find-nodule', mustFollow: [] }, { id: 'grind', mustFollow: ['find-nodule'] }]
 */
export function restrictSteps(precedence: Precedence, wanted: readonly string[]): readonly Step[] {
  const places = wanted.map((id) => {
    const place = precedence.ids.indexOf(id);
    if (place < 0) throw new RangeError(`${id} is not among the steps`);
    return place;
  });
  return places.map((after, index) => {
    const earlier = places.filter((before) => comesBefore(precedence, before, after));
    const nearest = earlier.filter(
      (before) => !earlier.some((other) => comesBefore(precedence, before, other)),
    );
    return { id: wanted[index] ?? '', mustFollow: nearest.flatMap((before) => precedence.ids[before] ?? []) };
  });
}
