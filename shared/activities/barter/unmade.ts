import type { Good, NoWorld } from '../../bartering/index.ts';
import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { Band } from '../../library/bands.ts';
import { barterProblems } from '../../words/en/barter-problems.ts';
import type { BarterBlock } from './schema.ts';

const fault = (
  code: Fault['code'],
  path: readonly string[],
  words: ReturnType<typeof barterProblems.unmade>,
  replacement: string | null = null,
): Fault => ({
  code,
  grade: 'error',
  path: ['make', ...path],
  ...words,
  ...(replacement === null ? {} : { replacement }),
});

const within = (given: number, least: number, most: number): string =>
  String(Math.min(Math.max(given, least), most));

/** Why a gathering could not be made, at the line that asked too much. */
export function unmadeFault(
  why: NoWorld,
  make: NonNullable<BarterBlock['make']>,
  goods: readonly Good[],
  band: Band,
): Fault {
  const atGoods = make.goods === undefined ? ['chain'] : ['goods'];
  switch (why.code) {
    case 'goods-too-few':
      return fault('goods-too-few', atGoods, barterProblems.goodsTooFew(why.given, why.needed));
    case 'keeping-goods-too-few':
      return fault('goods-too-few', atGoods, barterProblems.keepingTooFew(why.given, why.needed));
    case 'goods-repeated':
      return fault('good-repeated', atGoods, barterProblems.goodRepeated(why.good));
    case 'aim-unknown': {
      const ids = goods.map(({ id }) => id);
      const near = nearest(why.aim, ids);
      return fault('aim-unknown', ['aim'], barterProblems.aimUnknown(why.aim, near, ids), near);
    }
    case 'aim-not-swapped':
      return fault('aim-only-given', ['aim'], barterProblems.aimOnlyGiven(why.aim));
    case 'traders-unfit': {
      const { given, least, most } = why;
      const words = barterProblems.tradersUnfit(given, least, most, band);
      return fault('traders-unfit', ['traders'], words, within(given, least, most));
    }
    case 'chain-unfit': {
      const { given, least, most } = why;
      const words = barterProblems.chainUnfit(given, least, most, band);
      return fault('chain-unfit', ['chain'], words, within(given, least, most));
    }
    case 'luck-ran-out':
      return fault('world-unmade', atGoods, barterProblems.unmade(why.tried, make.traders, goods.length));
    default:
      return why satisfies never;
  }
}
