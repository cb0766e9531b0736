/**
 * The shortest cycle among some arrows, by name, beginning with the step listed first; [] where there is none.
 *
 * Each step comes before the next, and the last before the first. Of several as short, the one met first.
 * @example nameCycle(['a', 'b'], [[0, 1], [1, 0]]) // ['a', 'b']
 */
export function nameCycle(
  ids: readonly string[],
  arrows: readonly (readonly [number, number])[],
): readonly string[] {
  let shortest: readonly number[] = [];
  for (const start of ids.keys()) {
    const path = shortestReturn(start, arrows);
    if (path.length > 0 && (shortest.length === 0 || path.length < shortest.length)) shortest = path;
  }
  return shortest.flatMap((index) => ids[index] ?? []);
}

/** Breadth first from a step until an arrow leads back to it; [] where none does. */
function shortestReturn(start: number, arrows: readonly (readonly [number, number])[]): readonly number[] {
  const cameFrom = new Map<number, number | null>([[start, null]]);
  const queue = [start];
  for (const here of queue) {
    for (const [before, after] of arrows) {
      if (before !== here) continue;
      if (after === start) {
        const path: number[] = [];
        for (let step: number | null = here; step !== null; step = cameFrom.get(step) ?? null)
          path.unshift(step);
        return path;
      }
      if (!cameFrom.has(after)) {
        cameFrom.set(after, here);
        queue.push(after);
      }
    }
  }
  return [];
}
