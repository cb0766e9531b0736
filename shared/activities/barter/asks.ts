import type { Holding, Wants } from '../../bartering/index.ts';
import type { Band } from '../../library/bands.ts';
import type { Asks } from '../kind.ts';
import type { BarterActivity, GatheringActivity } from './activity.ts';

interface Party {
  readonly holds: Holding;
  readonly wants: Wants;
}

/** Fewest scarce goods one pupil wants before going for one gives up another. ASM, our judgement. */
const FEWEST_SCARCE = 2;

/** Fewest handovers that make a chain. */
const FEWEST_IN_CHAIN = 2;

/** The bands whose record asks what a token that all take would change. */
const READS_TOKEN: readonly Band[] = ['11-14', '14-16'];

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** Goods that are there, though more are wanted than there are. */
function scarceGoods(parties: readonly Party[]): readonly string[] {
  const goods = [...new Set(parties.flatMap(({ holds }) => Object.keys(holds)))];
  return goods.filter((good) => {
    const wanted = sum(parties.map(({ wants }) => (wants[good] ?? []).filter((worth) => worth > 0).length));
    const there = sum(parties.map(({ holds }) => holds[good] ?? 0));
    return there > 0 && wanted > there;
  });
}

/** Somebody who chooses wants several scarce goods that they do not hold, and cannot have them all. */
function hasScarcity(choosers: readonly Party[], parties: readonly Party[]): boolean {
  const scarce = scarceGoods(parties);
  return choosers.some(
    ({ holds, wants }) =>
      scarce.filter((good) => (holds[good] ?? 0) === 0 && (wants[good]?.[0] ?? 0) > 0).length >=
      FEWEST_SCARCE,
  );
}

/** Every way to the aim is a chain of swaps: where things may pass as gifts, the handovers counted may not be swaps. */
const isChainOfSwaps = ({ par, world }: GatheringActivity): boolean =>
  par >= FEWEST_IN_CHAIN &&
  world.goods.every(({ onlyGiven }) => !onlyGiven) &&
  world.traders.every(({ door, returns }) => door === 'open' && returns === null);

/**
 * What a gathering asks: whether swaps must follow on each other, whether there is too little of what is wanted, and,
 * for the bands whose record sets out a token, what there being no money changes. No rate is asked for: amounts are
 * offered and taken, never worked out.
 */
export function asksBarter(activity: BarterActivity): Asks {
  if (activity.play === 'class') {
    const parties = activity.deal.cards.map(({ holds, wants }) => ({ holds: { [holds]: 1 }, wants }));
    return { met: hasScarcity(parties, parties) ? ['scarcity'] : [], things: parties.length };
  }
  const { pupil, traders } = activity.world;
  const parties = [pupil, ...traders];
  return {
    met: [
      ...(isChainOfSwaps(activity) ? ['chain-swap'] : []),
      ...(hasScarcity([pupil], parties) ? ['scarcity'] : []),
    ],
    metIn: activity.coincidences.oneSided > 0 ? [{ bands: READS_TOKEN, met: ['no-money'] }] : [],
    things: sum(parties.flatMap(({ holds }) => Object.values(holds))),
  };
}
