import type { Handover, Refusal, World } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import { goodWords, sideWords, type RefusalWords } from './barter-view.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The words for a reason: its code, with the side where either may be the reason. */
function keyOf(refusal: Refusal): keyof RefusalWords {
  if (refusal.code === 'has-enough')
    return refusal.has === 0 ? `one-is-enough-${refusal.side}` : `has-enough-${refusal.side}`;
  return 'side' in refusal ? `${refusal.code}-${refusal.side}` : refusal.code;
}

/** Why an offer came to nothing, in a sentence. */
export function refusalWords(words: RefusalWords, world: World, offer: Handover, refusal: Refusal): string {
  const trader = world.traders.find(({ id }) => id === offer.with);
  const isGift = offer.take.length === 0;
  const returned = trader?.returns ?? null;
  const thing = 'good' in refusal ? goodWords(world, refusal.good) : '';
  const mine = sideWords(world, isGift && returned !== null ? [returned] : offer.take);
  const yours = sideWords(world, offer.give);
  const has = 'has' in refusal && 'good' in refusal ? goodWords(world, refusal.good, refusal.has) : '';
  const count = 'most' in refusal ? refusal.most : 'has' in refusal ? refusal.has : 0;
  return say(words[keyOf(refusal)], {
    thing,
    Thing: capital(thing),
    mine,
    Mine: capital(mine),
    yours,
    Yours: capital(yours),
    has,
    count,
  });
}
