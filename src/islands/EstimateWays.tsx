import { say } from '../../shared/words/index.ts';
import { ESTIMATE_WAYS, type EstimateStore, type EstimateTable } from '../stores/estimate.ts';
import type { EstimateProps } from './estimate-view.ts';

interface Props extends Pick<EstimateProps, 'activity' | 'words'> {
  readonly table: EstimateTable;
  readonly store: EstimateStore;
}

/** Who plays, and, where bands are asked in different ways, how to answer. */
export function EstimateWays({ activity, words, table, store }: Props) {
  const ways = { alone: words.wayAlone, pairs: words.wayPairs, class: words.wayClass };
  const asks = { choose: words.askChoose, number: words.askNumber, interval: words.askInterval };
  return (
    <>
      <div class="ways">
        <div class="ways-choice" role="group" aria-label={say(words.ways)}>
          {ESTIMATE_WAYS.map((way) => (
            <button
              key={way}
              type="button"
              class="ways-way"
              aria-pressed={way === table.way}
              onClick={() => store.change({ way, isRead: false })}
            >
              {say(ways[way])}
            </button>
          ))}
        </div>
        {activity.asks.length > 1 && (
          <div class="ways-choice" role="group" aria-label={say(words.asksLabel)}>
            {activity.asks.map(({ how }) => (
              <button
                key={how}
                type="button"
                class="ways-way"
                aria-pressed={how === table.how}
                onClick={() => store.change({ how, isRead: false })}
              >
                {say(asks[how])}
              </button>
            ))}
          </div>
        )}
      </div>
      <p>{howToAnswer(words, table)}</p>
    </>
  );
}

function howToAnswer(words: Props['words'], table: EstimateTable): string {
  if (table.way === 'class') {
    if (table.how === 'choose') return say(words.howClassChoose);
    return say(table.classBy === 'numbers' ? words.howClassNumbers : words.howClassBins);
  }
  const how = { choose: words.howChoose, number: words.howNumber, interval: words.howInterval }[table.how];
  return table.way === 'pairs' ? `${say(words.howPairs)} ${say(how)}` : say(how);
}
