import { pick, shuffle, uniform, uniformBelow, type Stream } from '../chance/index.ts';
import { BAND_PLAY } from './band-play.ts';
import type { Good, Trader, World } from './world.ts';
import type { WorldOrder } from './world-order.ts';

/** Invented: short names that are nobody's, each with its own first letter. */
const NAMES = ['Ama', 'Bero', 'Cale', 'Dunna', 'Esk', 'Fenn', 'Gorra', 'Hild'] as const;

/** A trader being written; worths are lists from the first of a good on. */
interface Draft {
  readonly holds: Map<string, number>;
  readonly wants: Map<string, number[]>;
  readonly forSwapping: Set<string>;
  door: 'open' | 'gift';
  returns: string | null;
}

/** The good of each part a draft needs. */
interface Parts {
  /** From what is brought to the aim: each is swapped for the next. */
  readonly chain: readonly Good[];
  /** Given to open a shut door, with what comes back for it; null where there is no gift. */
  readonly gift: { readonly given: Good; readonly returned: Good } | null;
  readonly rest: readonly Good[];
}

const blank = (): Draft => ({
  holds: new Map(),
  wants: new Map(),
  forSwapping: new Set(),
  door: 'open',
  returns: null,
});

/** What a good of a level is worth to those who hold it, and to those who want it: the second buys one level up and no more. */
const keepWorth = (level: number, chance: Stream): number =>
  Math.max(1, 3 * level - 2 + uniformBelow(chance, 2));
const wantWorth = (level: number, chance: Stream): number => 3 * level + 3 + uniformBelow(chance, 2);
/** The pupil's own wants rise along the chain, four for each level. */
const ownWorth = (level: number, chance: Stream): number => 4 * level + uniformBelow(chance, 4);

function partsOf(order: WorldOrder, chance: Stream): Parts {
  const goods = shuffle(chance, order.goods);
  const returned = goods.find((good) => good.onlyGiven && good.id !== order.aim && good.spoilsAfter === null);
  const hasGift = BAND_PLAY[order.band].hasGifts && returned !== undefined && uniform(chance) < 0.6;
  const length = hasGift ? order.chainLength - 1 : order.chainLength;
  const keeping = goods.filter(
    (good) => good.spoilsAfter === null && !good.onlyGiven && good.id !== order.aim,
  );
  const aim = goods.find(({ id }) => id === order.aim) ?? keeping.pop();
  const chain = keeping.splice(0, length);
  // Food may be what is brought: it must be gone before it spoils.
  const food = goods.find(
    (good) => good.spoilsAfter !== null && good.spoilsAfter > 1 && good.id !== order.aim && !good.onlyGiven,
  );
  if (food !== undefined && BAND_PLAY[order.band].mayStrand && !hasGift && uniform(chance) < 0.5)
    chain[0] = food;
  if (aim !== undefined) chain.push(aim);
  const given = hasGift ? keeping.find((good) => !chain.includes(good)) : undefined;
  const gift = given !== undefined && returned !== undefined ? { given, returned } : null;
  const used = new Set<Good>([...chain, ...(gift === null ? [] : [gift.given, gift.returned])]);
  return { chain, gift, rest: goods.filter((good) => !used.has(good)) };
}

/** Who gives each good of the chain from the second on: nobody twice running, everybody once before anybody twice. */
function giversOf(length: number, traders: number, chance: Stream): number[] {
  const givers: number[] = [];
  let line: number[] = [];
  while (givers.length < length) {
    if (line.length === 0)
      line = shuffle(
        chance,
        Array.from({ length: traders }, (_, index) => index),
      );
    const at = line.findIndex((trader) => trader !== givers.at(-1));
    givers.push(...line.splice(Math.max(at, 0), 1));
  }
  return givers;
}

const hold = (trader: Draft, good: string, count = 1): void =>
  void trader.holds.set(good, (trader.holds.get(good) ?? 0) + count);

/** Sets a want unless one stands already. */
const want = (trader: Draft, good: string, worths: readonly number[]): void => {
  if (!trader.wants.has(good)) trader.wants.set(good, [...worths]);
};

/** Lays the chain: each giver wants the good before and gives the next. At `pairAt` two are needed where else one is. */
function layChain(
  pupil: Draft,
  traders: readonly Draft[],
  parts: Parts,
  pairAt: number,
  chance: Stream,
): void {
  const { chain } = parts;
  const givers = giversOf(chain.length - 1, traders.length, chance);
  for (const [level, good] of chain.entries()) {
    const isPair = level === pairAt;
    const isAim = level === chain.length - 1;
    const own = level === 0 ? 1 : isAim ? 4 * level + 4 : ownWorth(level, chance);
    pupil.wants.set(good.id, isPair ? [own, 1] : [own]);
    if (level > 0 && !isAim) pupil.forSwapping.add(good.id);
    if (level === 0) hold(pupil, good.id, isPair ? 2 : 1);
    const giver = traders[givers[level - 1] ?? -1];
    const taker = traders[givers[level] ?? -1];
    if (giver !== undefined) {
      hold(giver, good.id, isPair ? 2 : 1);
      giver.wants.set(good.id, isPair ? [3 * level - 2, 1] : [keepWorth(level, chance)]);
    }
    if (taker !== undefined)
      taker.wants.set(
        good.id,
        isPair ? [Math.max(2, 3 * level + 1), level === 0 ? 1 : 2] : [wantWorth(level, chance)],
      );
  }
  // A pair at the start buys what is kept at 2, and one of it does not.
  const first = traders[givers[0] ?? -1];
  const second = chain[1];
  if (pairAt === 0 && first !== undefined && second !== undefined) first.wants.set(second.id, [2]);
  if (parts.gift !== null) {
    const { given, returned } = parts.gift;
    const shut = traders[pick(chance, givers)];
    if (shut === undefined) return;
    shut.door = 'gift';
    shut.returns = returned.id;
    hold(shut, returned.id);
    want(shut, returned.id, [1]);
    want(shut, given.id, [2]);
    hold(pupil, given.id);
    pupil.wants.set(given.id, [1]);
    pupil.wants.set(returned.id, [2]);
  }
}

/** Lays the other goods: by-ways that come back to the chain, and things that look well and lead nowhere. */
function layRest(pupil: Draft, traders: readonly Draft[], parts: Parts, chance: Stream): void {
  const { chain, rest } = parts;
  const last = chain.length - 1;
  // Those with nothing yet come first, so that nobody stands empty-handed.
  const line = shuffle(chance, [...traders]).sort((a, b) => a.holds.size - b.holds.size);
  for (const [index, good] of rest.entries()) {
    const holder = index < line.length ? line[index] : pick(chance, traders);
    if (holder === undefined) continue;
    const level = 1 + uniformBelow(chance, Math.max(1, last - 1));
    hold(holder, good.id, uniform(chance) < 0.2 ? 2 : 1);
    want(holder, good.id, [keepWorth(level, chance)]);
    const before = chain[level - 1];
    if (before !== undefined && uniform(chance) < 0.8)
      want(holder, before.id, [wantWorth(level - 1, chance)]);
    const isLure = uniform(chance) < 0.25;
    if (uniform(chance) < 0.85) {
      want(pupil, good.id, [isLure ? 4 * last + uniformBelow(chance, 3) : ownWorth(level, chance)]);
      if (!isLure) pupil.forSwapping.add(good.id);
    }
    const onward = pick(chance, traders);
    if (!isLure && uniform(chance) < 0.55) want(onward, good.id, [wantWorth(level, chance)]);
  }
  // Everybody wants something of what is about, if only what they have enough of.
  for (const trader of traders) {
    if (trader.wants.size > trader.holds.size) continue;
    const good = pick(chance, rest.length > 0 ? rest : chain);
    want(trader, good.id, [1 + uniformBelow(chance, 2)]);
  }
}

const written = (id: string, name: string, draft: Draft): Trader => ({
  id,
  name,
  holds: Object.fromEntries(draft.holds),
  wants: Object.fromEntries(draft.wants),
  forSwapping: [...draft.forSwapping],
  door: draft.door,
  returns: draft.returns,
});

/**
 * Drafts a world along a chain of goods; what it is worth is for `prove` to say.
 *
 * Every good has a level, its place along the chain. Whoever wants a good of one level gives at most the next level for it,
 * so that one-for-one no draft is shorter than its chain.
 */
export function draftWorld(order: WorldOrder, chance: Stream): World {
  const { bundle } = BAND_PLAY[order.band];
  const parts = partsOf(order, chance);
  const pupil = blank();
  const traders = Array.from({ length: order.traders }, blank);
  const swaps = parts.chain.length - 1;
  const pairAt = bundle > 1 && uniform(chance) < 0.7 ? uniformBelow(chance, swaps) : -1;
  layChain(pupil, traders, parts, pairAt, chance);
  layRest(pupil, traders, parts, chance);
  return {
    goods: order.goods,
    pupil: written('you', 'You', pupil),
    traders: traders.map((draft, index) => {
      const name = NAMES[index] ?? `Trader ${index + 1}`;
      return written(name.toLowerCase(), name, draft);
    }),
    aim: parts.chain[swaps]?.id ?? '',
    bundle,
  };
}
