import { worldProblems } from '../words/en/world-problems.ts';
import { explore, MOST_PLACES } from './explore.ts';
import { gather } from './gathering.ts';
import { inHand } from './position.ts';
import { prove, type Proof } from './proof.ts';
import type { Trader, World } from './world.ts';
import { error, type WorldFault } from './world-fault.ts';

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
  const names = holders.map(({ name }) => name);
  const onlyGiven = world.goods.some(({ id, onlyGiven }) => id === aim && onlyGiven);
  const words = worldProblems.unsolvable(aim, names, reached);
  const first = holders[0];
  const path = first === undefined ? ['aim'] : ['traders', first.id];
  if (onlyGiven)
    return error({ code: 'world-unsolvable', path, ...words, mend: worldProblems.mendOnlyGiven(aim, names) });
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
      const mend = worldProblems.mendWant(holder.name, { good, has, least, now }, aim, par);
      return error({ code: 'world-unsolvable', path: ['traders', holder.id, 'wants'], ...words, mend });
    }
  }
  return error({ code: 'world-unsolvable', path, ...words });
}

/** One straight swap and it is done: no chain to discover. */
export function trivialChain(world: World, proof: Proof): WorldFault {
  const straight = proof.example?.[0];
  const trader = world.traders.find(({ id }) => id === straight?.with);
  const good = straight?.give[0];
  const words = worldProblems.chainTrivial(trader?.name ?? null, world.aim, straight?.give ?? []);
  if (trader === undefined || good === undefined)
    return error({ code: 'world-trivial', path: ['aim'], ...words });
  const { par } = prove(withWant(world, trader, good, [0]), MOST_PLACES_MEND);
  const mend = worldProblems.mendTrivial(trader.name, good, par);
  return error({ code: 'world-trivial', path: ['traders', trader.id, 'wants', good], ...words, mend });
}

/** More than can be looked at: nothing can be promised of it. */
export const tooLarge = (proof: Proof): WorldFault => ({
  code: 'world-too-large',
  grade: proof.par === null ? 'error' : 'caution',
  path: ['traders'],
  ...worldProblems.tooManyPositions(MOST_PLACES, proof.positions - 1),
});
