import { nameCycle } from './name-cycle.ts';

/** A step of making, and the steps that must be done before it. */
export interface Step {
  readonly id: string;
  readonly mustFollow: readonly string[];
}

/** What comes before what among some steps. Steps are named by their place in `ids`. */
export interface Precedence {
  readonly ids: readonly string[];
  /** The arrows as drawn, each [before, after]. */
  readonly arrows: readonly (readonly [number, number])[];
  /** `isBefore[a][b]`: a comes somewhere before b, by one arrow or by several. */
  readonly isBefore: readonly (readonly boolean[])[];
}

/** Steps that can be ordered, or the cycle that keeps them from it. */
export type ReadSteps =
  | { readonly precedence: Precedence; readonly cycle: null }
  | { readonly precedence: null; readonly cycle: readonly string[] };

/** The transitive closure of some arrows between `size` steps. Source: Warshall 1962, J. ACM 9: 11-12. */
function close(size: number, arrows: readonly (readonly [number, number])[]): boolean[][] {
  const closed = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
  for (const [before, after] of arrows) (closed[before] ?? [])[after] = true;
  for (const [middle, beyond] of closed.entries()) {
    for (const row of closed) {
      if (row[middle] !== true) continue;
      for (const [last, isReached] of beyond.entries()) if (isReached) row[last] = true;
    }
  }
  return closed;
}

/**
 * Reads steps into what comes before what, or names the shortest cycle among them.
 *
 * A cycle is listed in the direction of making: each step before the next, and the last before the first again.
 * @throws RangeError on a repeated id or a step that must follow one not among them: the reader of a file checks these.
 * @example readSteps([{ id: 'rough-out', mustFollow: [] }, { id: 'grind', mustFollow: ['rough-out'] }]).precedence?.arrows // [[0, 1]]
 */
export function readSteps(steps: readonly Step[]): ReadSteps {
  const ids = steps.map((step) => step.id);
  const place = new Map(ids.map((id, index) => [id, index]));
  if (place.size !== ids.length) throw new RangeError(`a step is named twice among: ${ids.join(', ')}`);
  const arrows: (readonly [number, number])[] = [];
  for (const [after, step] of steps.entries()) {
    for (const id of new Set(step.mustFollow)) {
      const before = place.get(id);
      if (before === undefined)
        throw new RangeError(`${step.id} must follow ${id}, which is not among the steps`);
      arrows.push([before, after]);
    }
  }
  const isBefore = close(ids.length, arrows);
  if (isBefore.some((row, index) => row[index] === true)) {
    return { precedence: null, cycle: nameCycle(ids, arrows) };
  }
  return { precedence: { ids, arrows, isBefore }, cycle: null };
}

/** True where the one step comes before the other, by one arrow or by several. */
export const comesBefore = (precedence: Precedence, before: number, after: number): boolean =>
  precedence.isBefore[before]?.[after] === true;

/** Every pair that has an order, [before, after], drawn or implied, in the order of the steps. */
export function orderedPairs(precedence: Precedence): (readonly [number, number])[] {
  return precedence.isBefore.flatMap((row, before) =>
    row.flatMap((isBefore, after): (readonly [number, number])[] => (isBefore ? [[before, after]] : [])),
  );
}
