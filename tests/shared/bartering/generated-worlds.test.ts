import { describe, expect, test } from 'vitest';
import { stream } from '../../../shared/chance/index.ts';
import {
  aimlessPlay,
  checkWorld,
  makeWorld,
  scoreChain,
  type Proof,
  type World,
} from '../../../shared/bartering/index.ts';
import { allowed, everyHandover, following, isThere, opening, shortestLists } from './by-hand.ts';
import { goodsOf } from './worlds.ts';

const ORDERS = [
  { band: '4-5', traders: 3, chainLength: 2, goods: 6, worlds: 600 },
  { band: '5-7', traders: 3, chainLength: 2, goods: 6, worlds: 600 },
  { band: '5-7', traders: 4, chainLength: 3, goods: 8, worlds: 600 },
  { band: '7-9', traders: 5, chainLength: 3, goods: 9, worlds: 800 },
  { band: '7-9', traders: 5, chainLength: 4, goods: 10, worlds: 600 },
  { band: '9-11', traders: 5, chainLength: 3, goods: 9, worlds: 800 },
  { band: '9-11', traders: 6, chainLength: 4, goods: 11, worlds: 500 },
  { band: '11-14', traders: 5, chainLength: 4, goods: 11, worlds: 400 },
  { band: '14-16', traders: 6, chainLength: 5, goods: 12, worlds: 100 },
] as const;

const goods = (count: number) =>
  goodsOf(
    Array.from({ length: count }, (_, index) => `g${index}`),
    { g3: { spoilsAfter: 3 }, g6: { onlyGiven: count > 8 } },
  );

const made = ORDERS.flatMap(({ band, traders, chainLength, goods: count, worlds }) =>
  Array.from({ length: worlds }, (_, index) => {
    const seed = `${band}/${traders}/${chainLength}/${index}`;
    return {
      seed,
      band,
      chainLength,
      result: makeWorld({ band, traders, chainLength, goods: goods(count) }, stream(seed)),
    };
  }),
);

const proved = made.flatMap(({ seed, band, chainLength, result }) =>
  result.world === null ? [] : [{ seed, band, chainLength, world: result.world, proof: result.proof }],
);

/** How many of each good there are in all hands, told in one text. */
const countGoods = (
  world: World,
  hands: Readonly<Record<string, Readonly<Record<string, number>>>>,
): string =>
  world.goods.map(({ id }) => Object.values(hands).reduce((sum, hand) => sum + (hand[id] ?? 0), 0)).join(' ');

const standardOf = ({ par, aimless }: Proof) => ({
  par: par ?? 0,
  aimlessAverage: aimless?.average ?? Number.NaN,
});

/** One chain gone through by hand: what is wrong with it, in a word; '' for nothing. */
function faultOf(world: World, chain: Proof['example']): string {
  let scene = opening(world);
  const before = countGoods(world, scene.hands);
  for (const handover of chain ?? []) {
    const gains = allowed(world, scene, handover);
    if (gains === null) return 'not allowed';
    const isReturn = handover.give.length === 0;
    if (!isReturn && !(gains.pupil > 0 && gains.them > 0)) return 'somebody not better off';
    scene = following(world, scene, handover);
    if (countGoods(world, scene.hands) !== before) return 'goods lost or made';
  }
  return (scene.hands[world.pupil.id]?.[world.aim] ?? 0) > 0 ? '' : 'aim not reached';
}

describe('5,000 generated worlds', () => {
  test('every order is met', () => {
    expect(made).toHaveLength(5_000);
    expect(made.filter(({ result }) => result.world === null).map(({ seed }) => seed)).toEqual([]);
  });

  test('every world is solvable in just the handovers asked for', () => {
    expect(
      proved
        .filter(({ proof, chainLength }) => proof.solvable !== true || proof.par !== chainLength)
        .map(({ seed }) => seed),
    ).toEqual([]);
  });

  test('par and the number of chains are what trying every list by hand gives, and every such chain leaves both sides better off with goods conserved', () => {
    const wrong: string[] = [];
    for (const { seed, world, proof } of proved) {
      const lists = shortestLists(world, 8);
      if (lists[0]?.length !== proof.par || lists.length !== proof.chains)
        wrong.push(`${seed}: par or chains`);
      const fault = lists.map((list) => faultOf(world, list)).find((text) => text !== '');
      if (fault !== undefined) wrong.push(`${seed}: ${fault}`);
      if (faultOf(world, proof.example) !== '' || proof.example?.length !== proof.par)
        wrong.push(`${seed}: example`);
    }
    expect(wrong).toEqual([]);
  });

  test('par scores 1, no swaps score below 0', () => {
    const off = proved.filter(({ world, proof }) => {
      const best = scoreChain(world, standardOf(proof), proof.example ?? []).score;
      const none = scoreChain(world, standardOf(proof), []).score;
      return best !== 1 || none === null || none > 0;
    });
    expect(off.map(({ seed }) => seed)).toEqual([]);
  });

  test('aimless play averages 0 within 0.03', () => {
    let sum = 0;
    for (const { seed, world, proof } of proved) {
      sum +=
        scoreChain(world, standardOf(proof), aimlessPlay(world, stream(`aimless/${seed}`))).score ??
        Number.NaN;
    }
    expect(Math.abs(sum / proved.length)).toBeLessThan(0.03);
  });

  test('what aimless play gets is what going every way by hand gives, in 400 worlds', () => {
    // The mean of par / handovers over all that can happen, each allowed handover as likely.
    const mean = (world: World, scene: ReturnType<typeof opening>, made: number, par: number): number => {
      if (isThere(world, scene)) return par / made;
      const ways = everyHandover(world, scene);
      return ways.reduce(
        (sum, way) => sum + mean(world, following(world, scene, way), made + 1, par) / ways.length,
        0,
      );
    };
    const few = proved.filter((_, index) => index % 12 === 0 && index < 4_800);
    expect(few).toHaveLength(400);
    for (const { world, proof } of few) {
      expect(proof.aimless?.average).toBeCloseTo(mean(world, opening(world), 0, proof.par ?? 0), 9);
    }
  });

  test('one aim is wanted more than any other good', () => {
    const unclear = proved.filter(({ world }) => {
      const aim = world.pupil.wants[world.aim]?.[0] ?? 0;
      return world.goods.some(({ id }) => id !== world.aim && (world.pupil.wants[id]?.[0] ?? 0) >= aim);
    });
    expect(unclear.map(({ seed }) => seed)).toEqual([]);
  });

  test('bands under 11 are never left where one cannot step back', () => {
    const young = proved.filter(({ seed }) => !seed.startsWith('11') && !seed.startsWith('14'));
    expect(young.filter(({ proof }) => proof.deadEnds?.withoutWayBack !== 0).map(({ seed }) => seed)).toEqual(
      [],
    );
  });

  test('none is given back by the check of hand-written worlds, in 500 worlds', () => {
    const few = proved.filter((_, index) => index % 10 === 0);
    const faults = few.flatMap(({ seed, world, band }) =>
      checkWorld(world, band).faults.map(({ code }) => `${seed}: ${code}`),
    );
    expect(faults).toEqual([]);
  });

  test('the same seed gives the same world', () => {
    const order = { band: '9-11', traders: 5, chainLength: 3, goods: goods(9) } as const;
    expect(JSON.stringify(makeWorld(order, stream('7')))).toBe(JSON.stringify(makeWorld(order, stream('7'))));
    expect(JSON.stringify(makeWorld(order, stream('7')))).not.toBe(
      JSON.stringify(makeWorld(order, stream('8'))),
    );
  });
});
