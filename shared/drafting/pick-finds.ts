import { derive, pick, shuffle, uniform, uniformBelow, type Stream } from '../chance/index.ts';
import { trayMerit, type Pool } from './trays-merit.ts';

/** Up to so many choices, all are looked at. ASM, by time: some 20 ms. */
const ALL_LOOKED_AT = 4000;
/** Choices this near the best are as good, and the seed picks among them. ASM. */
export const AS_GOOD = 0.02;
const RESTARTS = 6;
const SWAPS = 800;
/** A loss of merit taken as often as not, nearly, at the start. ASM. */
const WARMEST = 0.02;

/** A choice of finds, by place in the pool, and how it was sought. */
export interface Choice {
  readonly chosen: readonly number[];
  readonly merit: number;
  /** All were looked at: nothing better exists. */
  readonly isBest: boolean;
  readonly lookedAt: number;
}

/** How many ways there are to choose, up to a limit. */
function ways(from: number, count: number): number {
  let total = 1;
  for (let step = 1; step <= Math.min(count, from - count); step += 1) {
    total = (total * (from - step + 1)) / step;
    if (total > ALL_LOOKED_AT) return Infinity;
  }
  return Math.round(total);
}

/** Every choice of `count` places that holds the fixed ones. */
function* everyChoice(
  size: number,
  count: number,
  fixed: readonly number[],
): Generator<readonly number[], void, void> {
  const free = Array.from({ length: size }, (_, index) => index).filter((index) => !fixed.includes(index));
  const wanted = count - fixed.length;
  const places = Array.from({ length: wanted }, (_, index) => index);
  if (wanted < 0 || wanted > free.length) return;
  for (;;) {
    yield [...fixed, ...places.map((place) => free[place] ?? 0)];
    let at = wanted - 1;
    while (at >= 0 && places[at] === free.length - wanted + at) at -= 1;
    if (at < 0) return;
    const next = (places[at] ?? 0) + 1;
    for (let place = at; place < wanted; place += 1) places[place] = next + place - at;
  }
}

/** A start: the fixed finds, then finds of a few values in turn, so that trays begin even. */
function startFrom(pool: Pool, count: number, fixed: readonly number[], chance: Stream): readonly number[] {
  const values = new Set(fixed.map((index) => pool.tray[index] ?? 0));
  const all = shuffle(
    chance,
    pool.values.map((_, value) => value),
  );
  for (const value of all) if (values.size < pool.mostTrays) values.add(value);
  const piles = [...values].map((value) =>
    shuffle(
      chance,
      pool.finds.flatMap((_, index) => (pool.tray[index] === value && !fixed.includes(index) ? [index] : [])),
    ),
  );
  const chosen = [...fixed];
  while (chosen.length < count && piles.some((pile) => pile.length > 0)) {
    for (const pile of piles) {
      const next = chosen.length < count ? pile.pop() : undefined;
      if (next !== undefined) chosen.push(next);
    }
  }
  return chosen;
}

/**
 * Swaps one find for another: at first also for a little worse, so that a start that leads nowhere is left, and less and
 * less so. Source: Kirkpatrick, Gelatt & Vecchi 1983, Science 220, 671–680 (annealing); the cooling is ours (ASM).
 */
function anneal(
  pool: Pool,
  start: readonly number[],
  fixed: readonly number[],
  chance: Stream,
): { chosen: readonly number[]; merit: number } {
  let chosen = start;
  let merit = trayMerit(pool, chosen);
  let best = { chosen, merit };
  for (let swap = 0; swap < SWAPS && chosen.length > fixed.length; swap += 1) {
    const out = fixed.length + uniformBelow(chance, chosen.length - fixed.length);
    const into = uniformBelow(chance, pool.finds.length);
    if (chosen.includes(into)) continue;
    const next = chosen.with(out, into);
    const nextMerit = trayMerit(pool, next);
    const warmth = WARMEST * (1 - swap / SWAPS) ** 2;
    // From a choice that cannot be played any step is taken.
    const isTaken =
      nextMerit >= merit ||
      (merit >= 0 && nextMerit >= 0 && uniform(chance) < Math.exp((nextMerit - merit) / warmth));
    if (!isTaken) continue;
    [chosen, merit] = [next, nextMerit];
    if (merit > best.merit) best = { chosen, merit };
  }
  return best;
}

/**
 * Picks the finds of a pool that make the best trays: all choices where they are few, else annealing from several
 * starts. Null where no choice can be played. Yields between starts.
 */
export function* pickFinds(
  pool: Pool,
  count: number,
  fixed: readonly number[],
  chance: Stream,
): Generator<void, Choice | null, void> {
  const found: { chosen: readonly number[]; merit: number }[] = [];
  const all = ways(pool.finds.length - fixed.length, count - fixed.length);
  let lookedAt = 0;
  if (all <= ALL_LOOKED_AT) {
    for (const chosen of everyChoice(pool.finds.length, count, fixed)) {
      lookedAt += 1;
      found.push({ chosen, merit: trayMerit(pool, chosen) });
    }
  } else {
    for (let start = 0; start < RESTARTS; start += 1) {
      const own = derive(chance, String(start));
      found.push(anneal(pool, startFrom(pool, count, fixed, own), fixed, own));
      lookedAt += SWAPS;
      yield;
    }
  }
  let best = -1;
  for (const { merit } of found) best = Math.max(best, merit);
  if (best < 0) return null;
  const good = found.filter(({ merit }) => merit >= best - AS_GOOD);
  return { ...pick(chance, good), isBest: all <= ALL_LOOKED_AT, lookedAt };
}
