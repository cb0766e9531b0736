import type { Gathering } from './gathering.ts';
import { inHand, owedBy, type Position, type Step } from './position.ts';
import { refusalOfStep } from './refusal.ts';
import { worthOfLast } from './worth.ts';

/** Every choice of up to `most` things out of what is there, each choice in rising order; fewer things first. */
function choices(
  available: readonly { readonly good: number; readonly count: number }[],
  most: number,
): number[][] {
  let lists: number[][] = [[]];
  const result: number[][] = [];
  for (let size = 1; size <= most; size += 1) {
    const longer: number[][] = [];
    for (const list of lists) {
      for (const { good, count } of available) {
        if (good < (list.at(-1) ?? 0)) continue;
        if (list.filter((other) => other === good).length < count) longer.push([...list, good]);
      }
    }
    result.push(...longer);
    lists = longer;
  }
  return result;
}

/** What one side has that the other would take. */
function wantedFrom(
  gathering: Gathering,
  position: Position,
  holder: number,
  taker: number,
): { good: number; count: number }[] {
  const wanted: { good: number; count: number }[] = [];
  for (let good = 0; good < gathering.goodCount; good += 1) {
    const count = inHand(gathering, position, holder, good);
    if (count > 0 && worthOfLast(gathering, position, taker, good, 1) > 0) wanted.push({ good, count });
  }
  return wanted;
}

/** Every step that may be made from a position, in a stable order: trader by trader, returns, gifts, then swaps. */
export function legalSteps(gathering: Gathering, position: Position): Step[] {
  const steps: Step[] = [];
  const offer = (step: Step): void => {
    if (refusalOfStep(gathering, position, step) === null) steps.push(step);
  };
  for (let trader = 1; trader < gathering.traderCount; trader += 1) {
    const owed = owedBy(gathering, position, trader);
    if (owed >= 0) offer({ with: trader, give: [], take: [owed] });
    const given = choices(wantedFrom(gathering, position, 0, trader), gathering.bundle);
    if (given.length === 0) continue;
    const returned = gathering.returns[trader] ?? -1;
    if (returned >= 0)
      for (const give of given) if (give.length === 1) offer({ with: trader, give, take: [] });
    const taken = choices(wantedFrom(gathering, position, trader, 0), gathering.bundle);
    for (const give of given) {
      for (const take of taken)
        if (give.length === 1 || take.length === 1) offer({ with: trader, give, take });
    }
  }
  return steps;
}
