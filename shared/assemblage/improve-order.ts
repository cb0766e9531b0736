import { fiedlerOrder } from './fiedler-order.ts';
import { isBetter, robinsonBreaks, type RobinsonBreaks } from './robinson-form.ts';

/** An order of pits and how far it is from Robinson form. */
export interface OrderFound {
  readonly order: readonly number[];
  readonly breaks: RobinsonBreaks;
}

/** Steps of work for the improving of orders; some tens of milliseconds. ASM. */
const WORK = 1e7;

/** From a pit always on to the pit most like the last. */
function chainFrom(similarity: readonly (readonly number[])[], start: number): readonly number[] {
  const order = [start];
  while (order.length < similarity.length) {
    const row = similarity[order.at(-1) ?? 0] ?? [];
    const left = [...row.keys()].filter((pit) => !order.includes(pit));
    order.push(left.reduce((best, pit) => ((row[pit] ?? 0) > (row[best] ?? 0) ? pit : best), left[0] ?? 0));
  }
  return order;
}

/** Takes one pit out and puts it in elsewhere as long as that mends breaks and work is left. */
function improve(
  similarity: readonly (readonly number[])[],
  start: readonly number[],
  work: number,
): OrderFound {
  let best: OrderFound = { order: start, breaks: robinsonBreaks(similarity, start) };
  let tries = work / Math.max(1, start.length ** 3 / 3);
  for (let isMending = true; isMending && best.breaks.events > 0;) {
    isMending = false;
    for (const pit of start) {
      const others = best.order.filter((other) => other !== pit);
      for (let place = 0; place <= others.length && tries > 0; place += 1) {
        const order = others.toSpliced(place, 0, pit);
        const breaks = robinsonBreaks(similarity, order);
        tries -= 1;
        if (!isBetter(breaks, best.breaks)) continue;
        best = { order, breaks };
        isMending = true;
      }
    }
  }
  return best;
}

/** The best order reached from the spectral one and from a chain begun at each pit, moving one pit at a time. */
export function improvedOrder(similarity: readonly (readonly number[])[]): OrderFound {
  const starts = [
    fiedlerOrder(similarity),
    ...[...similarity.keys()].map((pit) => chainFrom(similarity, pit)),
  ];
  const [spectral = [], ...chains] = starts;
  let best = improve(similarity, spectral, WORK / 4);
  for (const start of chains) {
    if (best.breaks.events === 0) break;
    const found = improve(similarity, start, WORK / chains.length);
    if (isBetter(found.breaks, best.breaks)) best = found;
  }
  return best;
}
