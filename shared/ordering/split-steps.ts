import { comesBefore, type Precedence } from './precedence.ts';

/**
 * Steps taken apart: `series` parts follow one another whole, `parallel` parts have nothing to do with each other,
 * a `knot` is what cannot be taken apart either way.
 */
export type StepPart =
  | { readonly kind: 'step'; readonly step: number }
  | { readonly kind: 'series' | 'parallel'; readonly parts: readonly StepPart[]; readonly size: number }
  | { readonly kind: 'knot'; readonly steps: readonly number[] };

/** Groups of steps joined, directly or through others, by a relation. */
function groups(steps: readonly number[], areJoined: (a: number, b: number) => boolean): number[][] {
  const left = new Set(steps);
  const result: number[][] = [];
  for (const first of steps) {
    if (!left.delete(first)) continue;
    const group = [first];
    for (const here of group) {
      for (const other of left) {
        if (!areJoined(here, other)) continue;
        left.delete(other);
        group.push(other);
      }
    }
    result.push(group);
  }
  return result;
}

/** Takes steps apart into series, parallel strands and knots, so that orders can be counted part by part. */
export function splitSteps(precedence: Precedence, steps: readonly number[]): StepPart {
  const [only] = steps;
  if (steps.length === 1 && only !== undefined) return { kind: 'step', step: only };
  const areOrdered = (a: number, b: number): boolean =>
    comesBefore(precedence, a, b) || comesBefore(precedence, b, a);
  const strands = groups(steps, areOrdered);
  const split = (group: readonly number[]): StepPart => splitSteps(precedence, group);
  if (strands.length !== 1) return { kind: 'parallel', parts: strands.map(split), size: steps.length };
  const stages = groups(steps, (a, b) => !areOrdered(a, b));
  if (stages.length === 1) return { kind: 'knot', steps };
  // Every step of one stage comes before every step of the next, so any one of each tells which is first.
  const ordered = stages.toSorted((a, b) => (comesBefore(precedence, a[0] ?? -1, b[0] ?? -1) ? -1 : 1));
  return { kind: 'series', parts: ordered.map(split), size: steps.length };
}

/** How many steps a part holds. */
export function partSize(part: StepPart): number {
  switch (part.kind) {
    case 'step':
      return 1;
    case 'series':
    case 'parallel':
      return part.size;
    case 'knot':
      return part.steps.length;
    default:
      return part satisfies never;
  }
}
