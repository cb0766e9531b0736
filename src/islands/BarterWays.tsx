import { say } from '../../shared/words/index.ts';
import { BARTER_WAYS, type BarterStore, type BarterTable, type BarterWay } from '../stores/barter.ts';
import type { BarterWords } from './barter-view.ts';
import type { BarterMoves } from './use-barter-moves.ts';

interface Props {
  readonly words: BarterWords;
  readonly table: BarterTable;
  readonly store: BarterStore;
  readonly moves: BarterMoves;
}

/** How to play: alone, in pairs, or hands up for whom to go to next. */
export function BarterWays({ words, table, store, moves }: Props) {
  const names: Readonly<Record<BarterWay, string>> = {
    alone: say(words.wayAlone),
    pairs: say(words.wayPairs),
    hands: say(words.wayHands),
  };
  const how: Readonly<Record<BarterWay, string>> = {
    alone: say(words.howTo),
    pairs: say(words.pairsHow),
    hands: say(words.handsHow),
  };
  const hasHands = Object.values(table.hands).some((count) => count > 0);
  return (
    <div class="ways">
      <div class="ways-choice" role="group" aria-label={say(words.ways)}>
        {BARTER_WAYS.map((way) => (
          <button
            key={way}
            type="button"
            class="ways-way"
            aria-pressed={way === table.way}
            onClick={() => store.playAs(way)}
          >
            {names[way]}
          </button>
        ))}
      </div>
      <p class="ways-how">{how[table.way]}</p>
      {table.way === 'hands' && (
        <button
          type="button"
          class="press"
          aria-disabled={!hasHands}
          onClick={(event) => moves.goWhereMost(event.detail === 0)}
        >
          {say(words.handsGo)}
        </button>
      )}
    </div>
  );
}
