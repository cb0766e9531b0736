import type { Gathering } from './gathering.ts';
import { inHand, owedBy, type Position, type Step } from './position.ts';
import { refusalOfStep } from './refusal.ts';
import { worthGained, worthLost, worthOfLast } from './worth.ts';

/** Things one side might hand over: what the holder would lose by them, and the taker gain. */
interface Choice {
  readonly goods: readonly number[];
  readonly loss: number;
  readonly gain: number;
}

/** Every choice of up to `most` things out of what is there, each in rising order; fewer things first. */
function lists(
  available: readonly { readonly good: number; readonly count: number }[],
  most: number,
): number[][] {
  if (most === 1) return available.map(({ good }) => [good]);
  let shorter: number[][] = [[]];
  const result: number[][] = [];
  for (let size = 1; size <= most; size += 1) {
    const longer: number[][] = [];
    for (const list of shorter) {
      for (const { good, count } of available) {
        if (good < (list.at(-1) ?? 0)) continue;
        if (list.filter((other) => other === good).length < count) longer.push([...list, good]);
      }
    }
    result.push(...longer);
    shorter = longer;
  }
  return result;
}

/** What one side has that the other would take, in every choice. */
function choicesOf(gathering: Gathering, position: Position, holder: number, taker: number): Choice[] {
  const wanted: { good: number; count: number }[] = [];
  for (let good = 0; good < gathering.goodCount; good += 1) {
    const count = inHand(gathering, position, holder, good);
    if (count > 0 && worthOfLast(gathering, position, taker, good, 1) > 0) wanted.push({ good, count });
  }
  return lists(wanted, gathering.bundle).map((goods) => ({
    goods,
    loss: worthLost(gathering, position, holder, goods),
    gain: worthGained(gathering, position, taker, goods),
  }));
}

/**
 * Every step that may be made from a position, in a stable order: trader by trader, returns, gifts, then swaps.
 *
 * Swaps that leave a side no better off are passed over before they are looked at closely: worths of different goods add up.
 */
export function legalSteps(gathering: Gathering, position: Position): Step[] {
  const steps: Step[] = [];
  const offer = (step: Step): void => {
    if (refusalOfStep(gathering, position, step) === null) steps.push(step);
  };
  for (let trader = 1; trader < gathering.traderCount; trader += 1) {
    const owed = owedBy(gathering, position, trader);
    if (owed >= 0) offer({ with: trader, give: [], take: [owed] });
    const given = choicesOf(gathering, position, 0, trader);
    if (given.length === 0) continue;
    const isReturner = (gathering.returns[trader] ?? -1) >= 0;
    if (isReturner)
      for (const { goods } of given) if (goods.length === 1) offer({ with: trader, give: goods, take: [] });
    const taken = choicesOf(gathering, position, trader, 0);
    for (const give of given) {
      for (const take of taken) {
        if (give.goods.length > 1 && take.goods.length > 1) continue;
        if (take.gain > give.loss && give.gain > take.loss)
          offer({ with: trader, give: give.goods, take: take.goods });
      }
    }
  }
  return steps;
}
