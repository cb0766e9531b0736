import type { GatheringActivity } from '../../shared/activities/scorers.ts';
import type { Handover, Holding, World } from '../../shared/bartering/index.ts';
import { say, type Template } from '../../shared/words/index.ts';
import type { barter } from '../../shared/words/en/barter.ts';
import type { barterRefusals } from '../../shared/words/en/barter-refusals.ts';

/** The words of a gathering, resolved for a band. */
export type BarterWords = Readonly<Record<keyof typeof barter, Template>>;
export type RefusalWords = Readonly<Record<keyof typeof barterRefusals, Template>>;

export interface BarterProps {
  readonly lesson: string;
  readonly activity: GatheringActivity;
  readonly words: BarterWords;
  readonly refusals: RefusalWords;
  /** Older bands see how the score is worked out, and each one's numbers. */
  readonly showsWorking: boolean;
  /** The oldest look at hours, rings and a shared token. */
  readonly showsViews: boolean;
}

/** A count of a good in words: "a hide", "2 hides". */
export function goodWords(world: World, id: string, count = 1): string {
  const good = world.goods.find((each) => each.id === id);
  if (good === undefined) return id;
  return count === 1 ? good.one : `${count} ${good.many}`;
}

/** A list of goods as how many of each. */
export function countsOf(goods: readonly string[]): Holding {
  const counts: Record<string, number> = {};
  for (const good of goods) counts[good] = (counts[good] ?? 0) + 1;
  return counts;
}

/** Goods of one side in words: "2 hides + a pot". */
export const sideWords = (world: World, goods: readonly string[]): string =>
  Object.entries(countsOf(goods))
    .map(([good, count]) => goodWords(world, good, count))
    .join(' + ');

export const nameOf = (world: World, trader: string): string =>
  (trader === world.pupil.id ? world.pupil : world.traders.find(({ id }) => id === trader))?.name ?? trader;

/** A handover in words: a swap, a gift, or what came back for one. */
export function rowWords(world: World, words: BarterWords, { with: trader, give, take }: Handover): string {
  const row = take.length === 0 ? words.rowGift : give.length === 0 ? words.rowReturn : words.rowSwap;
  return say(row, {
    name: nameOf(world, trader),
    given: sideWords(world, give),
    taken: sideWords(world, take),
  });
}
