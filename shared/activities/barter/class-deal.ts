import { aimlessClassShare, deal } from '../../bartering/index.ts';
import { stream } from '../../chance/index.ts';
import type { ClassActivity, ClassDeal } from './activity.ts';

/**
 * The cards for a class of any size: the same activity and number always get the same cards, on paper and on screen.
 *
 * @param plays How many aimless plays the average is taken from; more where there is time.
 * @throws RangeError as `deal` does.
 */
export function dealFor(
  { seed, band, goods }: Pick<ClassActivity, 'seed' | 'band' | 'goods'>,
  pupils: number,
  plays?: number,
): ClassDeal {
  const { cards, bestTotal, possible, takesFrom, straightPlan } = deal(
    { pupils, band, goods: goods.map(({ id }) => id) },
    stream(`${seed}/${pupils}`),
  );
  const aimlessShare = aimlessClassShare(cards, bestTotal, plays);
  return { cards, bestTotal, possible, takesFrom, straightPlan, aimlessShare };
}
