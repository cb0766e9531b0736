import { explore, MOST_PLACES } from './explore.ts';
import { gather } from './gathering.ts';
import { inHand } from './position.ts';
import { prove, type Proof } from './proof.ts';
import type { Trader, World } from './world.ts';
import { listed, type WorldFault } from './world-fault.ts';

/** Changes looked at before a mend is given in general words. */
const MOST_MENDS = 16;
/** Places looked at for each. */
const MOST_PLACES_MEND = 1_000;

/** A world in which one trader's want is another list. */
const withWant = (world: World, trader: Trader, good: string, worths: readonly number[]): World => ({
  ...world,
  traders: world.traders.map((other) =>
    other.id === trader.id ? { ...other, wants: { ...other.wants, [good]: worths } } : other,
  ),
});

/** The goods that can come into the pupil's hand, those that take most handovers first. */
function withinReach(world: World): string[] {
  const { places, gathering } = explore(gather(world), MOST_PLACES_MEND);
  const reached = new Set<string>();
  for (const { position } of places) {
    for (const [good, id] of gathering.goodIds.entries())
      if (inHand(gathering, position, 0, good) > 0) reached.add(id);
  }
  return [...reached].reverse();
}

/** Why the aim is out of reach, with one change that is proved to bring it within reach. */
export function unsolvable(world: World): WorldFault {
  const { aim } = world;
  const holders = world.traders.filter((trader) => (trader.holds[aim] ?? 0) > 0);
  const reached = withinReach(world);
  const names = listed(holders.map(({ name }) => name));
  const expected = `a chain of swaps from what you hold to "${aim}"`;
  const onlyGiven = world.goods.some(({ id, onlyGiven }) => id === aim && onlyGiven);
  const received = `no chain: ${names} gives "${aim}" for nothing you can come by (${listed(reached)})`;
  const first = holders[0];
  const path = first === undefined ? ['aim'] : ['traders', first.id];
  if (onlyGiven) {
    const mend = `"${aim}" is only given: let ${names} return it for a gift you can come by, or let it be swapped`;
    return { code: 'world-unsolvable', grade: 'error', path, expected, received, mend };
  }
  const candidates = holders.flatMap((holder) => {
    const held = holder.holds[aim] ?? 0;
    const keep = holder.wants[aim]?.[held - 1] ?? 0;
    return reached.map((good) => ({ holder, good, least: keep + 1, has: holder.holds[good] ?? 0 }));
  });
  for (const shortest of [2, 1]) {
    for (const { holder, good, least, has } of candidates.slice(0, MOST_MENDS)) {
      const worths = Array.from({ length: has + 1 }, (_, at) =>
        Math.max(least, holder.wants[good]?.[at] ?? 0),
      );
      const { solvable, par } = prove(withWant(world, holder, good, worths), MOST_PLACES_MEND);
      if (solvable !== true || par === null || par < shortest) continue;
      const now = holder.wants[good]?.[has] ?? 0;
      const much = has === 0 ? `"${good}"` : `one more "${good}" (number ${has + 1})`;
      const mend = `let ${holder.name} want ${much} at ${least} or more (now ${now}): then "${aim}" is ${par} ${par === 1 ? 'handover' : 'handovers'} away`;
      return {
        code: 'world-unsolvable',
        grade: 'error',
        path: ['traders', holder.id, 'wants'],
        expected,
        received,
        mend,
      };
    }
  }
  const mend = `let ${names} want something you can come by more than "${aim}", and let it be worth less to you than "${aim}"`;
  return { code: 'world-unsolvable', grade: 'error', path, expected, received, mend };
}

/** One straight swap and it is done: no chain to discover. */
export function trivialChain(world: World, proof: Proof): WorldFault {
  const straight = proof.example?.[0];
  const trader = world.traders.find(({ id }) => id === straight?.with);
  const good = straight?.give[0];
  const expected = 'a chain of two handovers or more';
  const received = `one handover: ${trader?.name ?? 'a trader'} gives "${world.aim}" for ${listed(straight?.give ?? [])}`;
  if (trader === undefined || good === undefined) {
    return {
      code: 'world-trivial',
      grade: 'error',
      path: ['aim'],
      expected,
      received,
      mend: 'put one more trader between you and the aim',
    };
  }
  const { par } = prove(withWant(world, trader, good, [0]), MOST_PLACES_MEND);
  const then =
    par !== null && par > 1
      ? `: then it takes ${par}`
      : ', and let somebody else take it for a thing that is wanted instead';
  const mend = `let ${trader.name} not want "${good}"${then}`;
  return {
    code: 'world-trivial',
    grade: 'error',
    path: ['traders', trader.id, 'wants', good],
    expected,
    received,
    mend,
  };
}

/** More than can be looked at: nothing can be promised of it. */
export const tooLarge = (proof: Proof): WorldFault => ({
  code: 'world-too-large',
  grade: proof.par === null ? 'error' : 'caution',
  path: ['traders'],
  expected: `at most ${MOST_PLACES} positions that can come about`,
  received: `more than ${proof.positions - 1}`,
  mend: 'let traders want fewer things, hold fewer of each, or let a swap be one for one',
});
