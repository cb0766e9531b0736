import type { Holding, World } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import type { BarterTable, Side } from '../stores/barter.ts';
import { countsOf, type BarterWords } from './barter-view.ts';
import { Thing } from './Thing.tsx';
import type { BarterMoves } from './use-barter-moves.ts';

interface Props {
  readonly world: World;
  readonly words: BarterWords;
  readonly table: BarterTable;
  readonly moves: BarterMoves;
  readonly name: string;
  readonly yours: Holding;
  readonly theirs: Holding;
}

/** What you give and what you take, chosen by pressing; then the offer, and the answer where it is no. */
export function OfferPanel({ world, words, table, moves, name, yours, theirs }: Props) {
  const { give, take } = table;
  const isNothing = give.length + take.length === 0;
  const offerWords =
    give.length > 0 && take.length === 0
      ? words.offerGift
      : give.length === 0 && take.length > 0
        ? words.offerReturn
        : words.offer;
  // Without gifts both sides are needed.
  const hasGifts = world.traders.some(({ returns }) => returns !== null);
  const canOffer = hasGifts ? !isNothing : give.length > 0 && take.length > 0;
  const sides = [
    ['give', words.giveLabel, yours, give],
    ['take', words.takeLabel, theirs, take],
  ] as const;
  return (
    <div class="offer">
      {sides.map(([side, label, holding, chosen]) => (
        <Choices
          key={side}
          side={side}
          label={say(label)}
          holding={holding}
          chosen={chosen}
          {...{ world, words, moves }}
        />
      ))}
      <div class="presses">
        <button
          type="button"
          class="press"
          data-move="offer"
          data-weight="main"
          aria-disabled={!canOffer}
          onClick={(event) => {
            if (canOffer) moves.offer(event.detail === 0);
          }}
        >
          {say(hasGifts ? offerWords : words.offer)}
        </button>
        <button type="button" class="press" onClick={(event) => moves.leave(event.detail === 0)}>
          {say(words.leave, { name })}
        </button>
      </div>
      {moves.answer !== null && <p class="offer-answer">{moves.answer}</p>}
    </div>
  );
}

interface ChoicesProps extends Pick<Props, 'world' | 'words' | 'moves'> {
  readonly side: Side;
  readonly label: string;
  readonly holding: Holding;
  readonly chosen: readonly string[];
}

/** One side of an offer: each thing in hand is a press; two of a kind are two where a side may hold two. */
function Choices({ world, words, moves, side, label, holding, chosen }: ChoicesProps) {
  const counts = countsOf(chosen);
  const inHand = Object.entries(holding).flatMap(([good, count]) =>
    Array.from({ length: Math.min(count, world.bundle) }, (_, index) => ({ good, index })),
  );
  return (
    <div class="offer-side" role="group" aria-label={label}>
      <span class="offer-label" aria-hidden="true">
        {label}
      </span>
      {inHand.length === 0 && <span class="quiet">{say(words.hasNothing)}</span>}
      {inHand.map(({ good, index }) => {
        const isChosen = (counts[good] ?? 0) > index;
        return (
          <button
            key={`${good}-${index}`}
            type="button"
            class="offer-thing"
            aria-pressed={isChosen}
            data-good={good}
            onClick={() => moves.choose(side, good, isChosen ? index : index + 1)}
          >
            <Thing world={world} good={good} />
          </button>
        );
      })}
    </div>
  );
}
