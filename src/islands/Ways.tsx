import { say } from '../../shared/words/index.ts';
import type { SortActivity } from '../../shared/activities/scorers.ts';
import { answered, WAYS, type SortStore, type SortTable, type Way } from '../stores/sort.ts';
import type { SortWords } from './sort-view.ts';

interface Props {
  readonly activity: SortActivity;
  readonly words: SortWords;
  readonly table: SortTable;
  readonly store: SortStore;
}

/** How to play: alone, in pairs, or hands up from the carpet. Trays of one's own are not for hands up. */
export function Ways({ activity, words, table, store }: Props) {
  const names: Readonly<Record<Way, string>> = {
    alone: say(words.wayAlone),
    pairs: say(words.wayPairs),
    hands: say(words.wayHands),
  };
  const ways = activity.ownTrays ? WAYS.filter((way) => way !== 'hands') : WAYS;
  const turn = answered(table).length + 1;
  const how: Readonly<Record<Way, string>> = {
    alone: say(activity.ownTrays ? words.howToOwn : words.howTo),
    pairs: `${say(words.pairsHow)} ${say(words.pairsTurn, {
      turn,
      who: say(turn % 2 === 1 ? words.pairsFirst : words.pairsSecond),
    })}`,
    hands: say(words.handsHow),
  };
  return (
    <div class="ways">
      <div class="ways-choice" role="group" aria-label={say(words.ways)}>
        {ways.map((way) => (
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
    </div>
  );
}
