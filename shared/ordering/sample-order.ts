import { pick, shuffle, type Stream } from '../chance/index.ts';
import { countDownSets, stepKey } from './down-sets.ts';
import type { Precedence } from './precedence.ts';
import { splitSteps, type StepPart } from './split-steps.ts';

const WORD = 0x1_0000_0000n;

/** A whole number from 0 to `bound` - 1, each as likely, of any size. */
function bigBelow(chance: Stream, bound: bigint): bigint {
  let range = 1n;
  let words = 0;
  while (range < bound) {
    range *= WORD;
    words += 1;
  }
  const limit = range - (range % bound);
  for (;;) {
    let value = 0n;
    for (let word = 0; word < words; word += 1) value = value * WORD + BigInt(chance.next());
    if (value < limit) return value % bound;
  }
}

/** From the last step back: each step that could be last, as often as orders end with it. */
function sampleKnot(precedence: Precedence, steps: readonly number[], chance: Stream): number[] {
  const sets = countDownSets(precedence, steps);
  if (sets === null) return sampleLoosely(precedence, steps, chance);
  const order: number[] = [];
  let key = steps.reduce((total, _, place) => total + stepKey(place), 0);
  for (let done = steps.length; done > 0; done -= 1) {
    const fewer = sets.ways[done - 1];
    let drawn = bigBelow(chance, sets.ways[done]?.get(key) ?? 1n);
    for (const [place, step] of steps.entries()) {
      if (order.includes(step)) continue;
      const count = fewer?.get(key - stepKey(place)) ?? 0n;
      if (drawn < count) {
        order.unshift(step);
        key -= stepKey(place);
        break;
      }
      drawn -= count;
    }
  }
  return order;
}

/** A valid order by picking any step that is free, again and again: valid, but not every order as likely. */
function sampleLoosely(precedence: Precedence, steps: readonly number[], chance: Stream): number[] {
  const left = new Set(steps);
  const order: number[] = [];
  while (left.size > 0) {
    const free = [...left].filter(
      (step) => ![...left].some((other) => precedence.isBefore[other]?.[step] === true),
    );
    const step = pick(chance, free);
    left.delete(step);
    order.push(step);
  }
  return order;
}

/** Lays orders into one another, every way as likely. */
function riffle(orders: readonly (readonly number[])[], chance: Stream): number[] {
  const owners = shuffle(
    chance,
    orders.flatMap((order, owner) => order.map(() => owner)),
  );
  const taken = orders.map(() => 0);
  return owners.flatMap((owner) => {
    const place = taken[owner] ?? 0;
    taken[owner] = place + 1;
    return orders[owner]?.[place] ?? [];
  });
}

function samplePart(precedence: Precedence, part: StepPart, chance: Stream): number[] {
  switch (part.kind) {
    case 'step':
      return [part.step];
    case 'series':
      return part.parts.flatMap((inner) => samplePart(precedence, inner, chance));
    case 'parallel':
      return riffle(
        part.parts.map((inner) => samplePart(precedence, inner, chance)),
        chance,
      );
    case 'knot':
      return sampleKnot(precedence, part.steps, chance);
    default:
      return part satisfies never;
  }
}

/**
 * A valid order, by chance, each as likely; where the orders are 'very-many' to count, each possible but not as likely.
 *
 * @example sampleOrder(precedence, stream('7')) // ['find-nodule', 'cut-haft-wood', …]
 */
export function sampleOrder(precedence: Precedence, chance: Stream): readonly string[] {
  const all = splitSteps(precedence, [...precedence.ids.keys()]);
  return samplePart(precedence, all, chance).flatMap((step) => precedence.ids[step] ?? []);
}

/** The redraws of a start that happens to be right already. Source: house rule (ASM). */
const MOST_REDRAWS = 20;

/**
 * The cards in the order they are dealt to the pupil: shuffled, and dealt again where that happens to be a valid order.
 *
 * After twenty redraws whatever came stands; where no step must follow another the first stands, since all are right.
 */
export function dealSteps(precedence: Precedence, chance: Stream): readonly string[] {
  const isRight = (order: readonly number[]): boolean =>
    !order.some((after, place) =>
      order.slice(place + 1).some((before) => precedence.isBefore[before]?.[after] === true),
    );
  let order = shuffle(chance, [...precedence.ids.keys()]);
  if (precedence.arrows.length > 0) {
    for (let redraw = 0; redraw < MOST_REDRAWS && isRight(order); redraw += 1) order = shuffle(chance, order);
  }
  return order.flatMap((step) => precedence.ids[step] ?? []);
}

/** The order that keeps nearest to the list the lead wrote: at each turn the earliest listed step that is free. */
export function listedOrder(precedence: Precedence): readonly string[] {
  const first = { seed: '', next: () => 0 };
  return sampleLoosely(precedence, [...precedence.ids.keys()], first).flatMap(
    (step) => precedence.ids[step] ?? [],
  );
}

/** A laying by chance, right or not: what guessing does. */
export const guessOrder = (precedence: Precedence, chance: Stream): readonly string[] =>
  shuffle(chance, precedence.ids);
