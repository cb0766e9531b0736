import type { Handover, World } from '../../../shared/bartering/index.ts';

/**
 * The rules once more, written from the list of rules and not from the engine: plain objects, nothing shared, no cleverness.
 * Slow, and the outside check of par, chains and legality.
 */
interface Scene {
  readonly hands: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** What each trader owes the pupil. */
  readonly owes: Readonly<Record<string, string>>;
  readonly befriended: readonly string[];
  readonly giftJustNow: string | null;
  readonly passed: number;
}

export const opening = (world: World): Scene => ({
  hands: Object.fromEntries(
    [world.pupil, ...world.traders].map((trader) => [trader.id, { ...trader.holds }]),
  ),
  owes: {},
  befriended: [],
  giftJustNow: null,
  passed: 0,
});

const goodOf = (world: World, id: string) => world.goods.find((good) => good.id === id);
const isBad = (world: World, scene: Scene, id: string): boolean =>
  scene.passed >= (goodOf(world, id)?.spoilsAfter ?? Infinity);

/** Hands as they will be once debts are paid. */
function settled(world: World, scene: Scene, who: string): Record<string, number> {
  const hand: Record<string, number> = { ...scene.hands[who] };
  for (const [trader, good] of Object.entries(scene.owes)) {
    if (who === trader) hand[good] = (hand[good] ?? 0) - 1;
    if (who === world.pupil.id) hand[good] = (hand[good] ?? 0) + 1;
  }
  return hand;
}

function worthOf(world: World, scene: Scene, who: string, hand: Readonly<Record<string, number>>): number {
  const trader = [world.pupil, ...world.traders].find(({ id }) => id === who);
  let worth = 0;
  for (const [good, count] of Object.entries(hand)) {
    if (isBad(world, scene, good)) continue;
    for (let at = 0; at < count; at += 1) worth += trader?.wants[good]?.[at] ?? 0;
  }
  return worth;
}

const plus = (
  hand: Readonly<Record<string, number>>,
  goods: readonly string[],
  by: number,
): Record<string, number> => {
  const result = { ...hand };
  for (const good of goods) result[good] = (result[good] ?? 0) + by;
  return result;
};

const holdsAll = (hand: Readonly<Record<string, number>>, goods: readonly string[]): boolean =>
  Object.values(plus(hand, goods, -1)).every((count) => count >= 0);

/** Each thing taken makes the taker's worth go up: taking one less would be worse. */
function usesEach(
  world: World,
  scene: Scene,
  who: string,
  before: Record<string, number>,
  goods: readonly string[],
): boolean {
  const all = worthOf(world, scene, who, plus(before, goods, 1));
  return goods.every(
    (_, at) =>
      all >
      worthOf(
        world,
        scene,
        who,
        plus(
          before,
          goods.filter((__, index) => index !== at),
          1,
        ),
      ),
  );
}

/** Both sides' gains for a handover that may happen; null for one that may not. */
export function allowed(
  world: World,
  scene: Scene,
  { with: who, give, take }: Handover,
): { pupil: number; them: number } | null {
  const me = world.pupil.id;
  const trader = world.traders.find(({ id }) => id === who);
  if (trader === undefined || give.length + take.length === 0) return null;
  if (!holdsAll(scene.hands[me] ?? {}, give) || !holdsAll(scene.hands[who] ?? {}, take)) return null;
  if (give.length === 0) {
    return take.length === 1 && scene.owes[who] === take[0] && scene.giftJustNow !== who
      ? { pupil: 0, them: 0 }
      : null;
  }
  const isGift = take.length === 0;
  const coming = isGift ? [trader.returns ?? ''] : take;
  if (isGift) {
    if (trader.returns === null || give.length !== 1 || scene.owes[who] !== undefined) return null;
    if ((scene.hands[who]?.[trader.returns] ?? 0) < 1) return null;
  } else {
    if (Math.min(give.length, take.length) > 1 || Math.max(give.length, take.length) > world.bundle)
      return null;
    if (give.some((good) => take.includes(good))) return null;
    if (trader.door === 'gift' && !scene.befriended.includes(who)) return null;
    if ([...give, ...take].some((good) => goodOf(world, good)?.onlyGiven === true)) return null;
    if (!holdsAll(settled(world, scene, who), take)) return null;
  }
  if ([...give, ...take].some((good) => isBad(world, scene, good))) return null;
  const mine = settled(world, scene, me);
  const theirs = settled(world, scene, who);
  if (!usesEach(world, scene, me, mine, coming) || !usesEach(world, scene, who, theirs, give)) return null;
  const gain = (
    name: string,
    hand: Record<string, number>,
    out: readonly string[],
    into: readonly string[],
  ): number =>
    worthOf(world, scene, name, plus(plus(hand, out, -1), into, 1)) - worthOf(world, scene, name, hand);
  const pupil = gain(me, mine, give, coming);
  const them = gain(who, theirs, coming, give);
  return pupil > 0 && them > 0 ? { pupil, them } : null;
}

export function following(world: World, scene: Scene, { with: who, give, take }: Handover): Scene {
  const me = world.pupil.id;
  const owes = { ...scene.owes };
  const returns = world.traders.find(({ id }) => id === who)?.returns ?? '';
  if (take.length === 0) owes[who] = returns;
  if (give.length === 0) delete owes[who];
  return {
    hands: {
      ...scene.hands,
      [me]: plus(plus(scene.hands[me] ?? {}, give, -1), take, 1),
      [who]: plus(plus(scene.hands[who] ?? {}, take, -1), give, 1),
    },
    owes,
    befriended: take.length === 0 ? [...scene.befriended, who] : scene.befriended,
    giftJustNow: take.length === 0 ? who : null,
    passed: scene.passed + 1,
  };
}

function lists(hand: Readonly<Record<string, number>>, most: number): string[][] {
  const things = Object.entries(hand).filter(([, count]) => count > 0);
  const result: string[][] = things.map(([good]) => [good]);
  if (most < 2) return result;
  for (const [at, [one, count]] of things.entries()) {
    if (count > 1) result.push([one, one]);
    for (const [other] of things.slice(at + 1)) result.push([one, other]);
  }
  return result;
}

export function everyHandover(world: World, scene: Scene): Handover[] {
  const result: Handover[] = [];
  const mine = lists(scene.hands[world.pupil.id] ?? {}, world.bundle);
  for (const { id } of world.traders) {
    const theirs = lists(scene.hands[id] ?? {}, world.bundle);
    for (const give of [[], ...mine]) {
      for (const take of [[], ...theirs]) {
        const handover = { with: id, give, take };
        if (allowed(world, scene, handover) !== null) result.push(handover);
      }
    }
  }
  return result;
}

export const isThere = (world: World, scene: Scene): boolean =>
  (scene.hands[world.pupil.id]?.[world.aim] ?? 0) > 0;

/** Every list of so few handovers that none is shorter, by trying all lists of 0, 1, 2, … handovers. */
export function shortestLists(world: World, most: number): Handover[][] {
  let scenes: { scene: Scene; made: Handover[] }[] = [{ scene: opening(world), made: [] }];
  for (let depth = 0; depth <= most; depth += 1) {
    const there = scenes.filter(({ scene }) => isThere(world, scene));
    if (there.length > 0) return there.map(({ made }) => made);
    scenes = scenes.flatMap(({ scene, made }) =>
      everyHandover(world, scene).map((handover) => ({
        scene: following(world, scene, handover),
        made: [...made, handover],
      })),
    );
  }
  return [];
}
