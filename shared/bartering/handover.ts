import { gather, type Gathering } from './gathering.ts';
import { legalSteps } from './legal.ts';
import { after, startOf, type Position, type Step } from './position.ts';
import { refusalOfStep, type Refusal } from './refusal.ts';
import type { Handover, World } from './world.ts';
import { gainsOf } from './worth.ts';

/** A step with its names. */
export const nameStep = (gathering: Gathering, step: Step): Handover => {
  const named = (goods: readonly number[]): string[] => goods.map((good) => gathering.goodIds[good] ?? '');
  return { with: gathering.traders[step.with]?.id ?? '', give: named(step.give), take: named(step.take) };
};

/** A handover in numbers, or why it cannot be read. */
function numberStep(
  gathering: Gathering,
  handover: Handover,
): { readonly step: Step } | { readonly refusal: Refusal } {
  const trader = gathering.traderOf.get(handover.with);
  if (trader === undefined || trader === 0)
    return { refusal: { code: 'trader-unknown', trader: handover.with } };
  const numbers = (ids: readonly string[]): number[] =>
    ids.map((id) => gathering.goodOf.get(id) ?? -1).sort((a, b) => a - b);
  const unknown = [...handover.give, ...handover.take].find((id) => !gathering.goodOf.has(id));
  if (unknown !== undefined) return { refusal: { code: 'good-unknown', good: unknown } };
  return { step: { with: trader, give: numbers(handover.give), take: numbers(handover.take) } };
}

/** What became of one handover of a play. */
export interface Told {
  readonly handover: Handover;
  /** Null when it happened. */
  readonly refusal: Refusal | null;
  /** By how much each side was better off; both 0 where it did not happen. */
  readonly gains: { readonly pupil: number; readonly them: number };
}

/** The positions a list of handovers leads through, the start first; a refused one leaves things as they were. */
export interface Replay {
  readonly gathering: Gathering;
  readonly told: readonly Told[];
  /** One for the start and one after each handover that happened. */
  readonly positions: readonly Position[];
}

/** Plays handovers from the start, one after the other. */
export function replay(world: World, handovers: readonly Handover[]): Replay {
  const gathering = gather(world);
  let position = startOf(gathering);
  const positions = [position];
  const told = handovers.map((handover): Told => {
    const read = numberStep(gathering, handover);
    const refusal = 'refusal' in read ? read.refusal : refusalOfStep(gathering, position, read.step);
    if (refusal !== null || 'refusal' in read) return { handover, refusal, gains: { pupil: 0, them: 0 } };
    const gains = gainsOf(gathering, position, read.step);
    position = after(gathering, position, read.step);
    positions.push(position);
    return { handover, refusal: null, gains };
  });
  return { gathering, told, positions };
}

/**
 * Why the next handover would not happen after those made so far; null when it would.
 *
 * @example whyNot(world, [], { with: 'ama', give: ['pot'], take: ['axe'] }) // { code: 'has-enough', … }
 */
export function whyNot(world: World, made: readonly Handover[], next: Handover): Refusal | null {
  return replay(world, [...made, next]).told.at(-1)?.refusal ?? null;
}

/**
 * Every handover that could come next after those made so far, in a stable order.
 *
 * For hints and for tests; a pupil finds them by asking.
 */
export function legalHandovers(world: World, made: readonly Handover[]): Handover[] {
  const { gathering, positions } = replay(world, made);
  const position = positions.at(-1);
  return position === undefined
    ? []
    : legalSteps(gathering, position).map((step) => nameStep(gathering, step));
}
