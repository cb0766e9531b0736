import type { Locator } from '@playwright/test';

/** Somebody at a gathering as the page shows them: what they hold, and what they would like, most first. */
export interface SeenTrader {
  readonly id: string;
  readonly holds: readonly string[];
  readonly likes: readonly (readonly string[])[];
}

/** A gathering as the page shows it. */
export interface SeenGathering {
  readonly holds: readonly string[];
  /** What one came for. */
  readonly aim: string;
  readonly traders: readonly SeenTrader[];
}

/** Reads a gathering off the page, by its drawings: each good has its own. */
export const seeGathering = (barter: Locator): Promise<SeenGathering> =>
  barter.evaluate((root) => {
    const goods = (inside: Element | null | undefined): string[] =>
      [...(inside?.querySelectorAll('.thing use') ?? [])].map((use) =>
        (use.getAttribute('href') ?? '').replace('#good-', ''),
      );
    const likes = (inside: Element | null | undefined): string[][] =>
      [...(inside?.querySelectorAll('.wants > li') ?? [])].map(goods);
    const pack = root.querySelector('.pack');
    return {
      holds: goods(pack?.querySelector('.things')),
      aim: likes(pack)[0]?.[0] ?? '',
      traders: [...root.querySelectorAll('.trader')].map((trader) => ({
        id: trader.querySelector('[data-trader]')?.getAttribute('data-trader') ?? '',
        holds: goods(trader.querySelector('.things')),
        likes: likes(trader),
      })),
    };
  });

/** One thing for another. */
export interface Step {
  readonly with: string;
  readonly give: string;
  readonly take: string;
}

/** How much somebody would like a thing: the place of its rank from the end; 0 where it is not named. */
const liking = ({ likes }: SeenTrader, good: string): number => {
  const rank = likes.findIndex((same) => same.includes(good));
  return rank === -1 ? 0 : likes.length - rank;
};

/** Single swaps that somebody would like, from what all hold at first. */
export const swapsLiked = ({ holds, traders }: SeenGathering): readonly Step[] =>
  traders.flatMap((trader) =>
    holds.flatMap((give) =>
      trader.holds
        .filter((take) => liking(trader, give) > liking(trader, take))
        .map((take) => ({ with: trader.id, give, take })),
    ),
  );

/** Swaps one for one that bring home the aim, by trying all chains, the short ones first; null where there is none. */
export function chainHome(seen: SeenGathering): readonly Step[] | null {
  interface Reached {
    readonly hand: readonly string[];
    readonly theirs: readonly (readonly string[])[];
    readonly chain: readonly Step[];
  }
  const swapped = (things: readonly string[], out: string, into: string): readonly string[] =>
    [...things.filter((thing) => thing !== out), into].toSorted();
  let edge: readonly Reached[] = [
    { hand: seen.holds.toSorted(), theirs: seen.traders.map(({ holds }) => holds), chain: [] },
  ];
  const known = new Set<string>();
  while (edge.length > 0) {
    const next: Reached[] = [];
    for (const { hand, theirs, chain } of edge) {
      if (hand.includes(seen.aim)) return chain;
      for (const [index, trader] of seen.traders.entries()) {
        const holds = theirs[index] ?? [];
        for (const give of new Set(hand))
          for (const take of new Set(holds)) {
            if (holds.includes(give) || liking(trader, give) <= liking(trader, take)) continue;
            const reached: Reached = {
              hand: swapped(hand, give, take),
              theirs: theirs.map((own, other) => (other === index ? swapped(own, take, give) : own)),
              chain: [...chain, { with: trader.id, give, take }],
            };
            const key = JSON.stringify([reached.hand, reached.theirs]);
            if (!known.has(key)) next.push(reached);
            known.add(key);
          }
      }
    }
    edge = next;
  }
  return null;
}
