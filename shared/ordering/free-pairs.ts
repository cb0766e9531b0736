import { comesBefore, type Precedence } from './precedence.ts';

/** Two steps that may come in either order, and what holds them on both sides. */
export interface FreePair {
  readonly pair: readonly [string, string];
  /** The last steps that both must wait for; [] where they share none. */
  readonly bothAfter: readonly string[];
  /** The first steps that need both; [] where nothing needs both. */
  readonly bothBefore: readonly string[];
}

/** Where in the line a step may lie in some valid order, counted from 1. */
export interface StepRoom {
  readonly id: string;
  readonly earliest: number;
  readonly latest: number;
}

/**
 * The pairs that are free, in the order of the steps, each with the reason: neither leads to the other; the nearest steps
 * that both wait for, and the nearest that wait for both.
 */
export function freePairs(precedence: Precedence): readonly FreePair[] {
  const steps = [...precedence.ids.keys()];
  const isBefore = (a: number, b: number): boolean => comesBefore(precedence, a, b);
  const names = (places: readonly number[]): readonly string[] =>
    places.flatMap((place) => precedence.ids[place] ?? []);
  return steps.flatMap((one) =>
    steps
      .filter((other) => other > one && !isBefore(one, other) && !isBefore(other, one))
      .map((other): FreePair => {
        const before = steps.filter((step) => isBefore(step, one) && isBefore(step, other));
        const after = steps.filter((step) => isBefore(one, step) && isBefore(other, step));
        const [first = '', second = ''] = names([one, other]);
        return {
          pair: [first, second],
          bothAfter: names(before.filter((step) => !before.some((later) => isBefore(step, later)))),
          bothBefore: names(after.filter((step) => !after.some((earlier) => isBefore(earlier, step)))),
        };
      }),
  );
}

/** For each step the earliest and latest place it may have: all before it done, all after it still to do. */
export function stepRooms(precedence: Precedence): readonly StepRoom[] {
  const steps = [...precedence.ids.keys()];
  return precedence.ids.map((id, step) => ({
    id,
    earliest: 1 + steps.filter((other) => comesBefore(precedence, other, step)).length,
    latest: steps.length - steps.filter((other) => comesBefore(precedence, step, other)).length,
  }));
}
