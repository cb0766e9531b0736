import type { Standing, Trader } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import type { BarterTable } from '../stores/barter.ts';
import { goodWords, type BarterProps } from './barter-view.ts';
import { Hands } from './Hands.tsx';
import { OfferPanel } from './OfferPanel.tsx';
import { Thing } from './Thing.tsx';
import type { BarterMoves } from './use-barter-moves.ts';
import { Wants } from './Wants.tsx';

interface Props extends Pick<BarterProps, 'activity' | 'words'> {
  readonly trader: Trader;
  readonly table: BarterTable;
  readonly moves: BarterMoves;
  readonly stand: Standing;
}

/** Someone round the fire: who they are, what they have, what they would like, and the offer while one is with them. */
export function TraderSheet({ activity, words, trader, table, moves, stand }: Props) {
  const { world } = activity;
  const { id, name, returns } = trader;
  const isOpen = table.with === id;
  const theirs = stand.hands[id] ?? {};
  const owed = stand.owed[id];
  const knowsWants = activity.wants === 'shown' || table.asked.includes(id);
  return (
    <li class="trader" data-state={isOpen ? 'open' : 'shut'}>
      <div class="trader-head">
        <h3 class="trader-name">
          {isOpen ? (
            name
          ) : (
            <button
              type="button"
              class="trader-go"
              data-trader={id}
              onClick={(event) => moves.goTo(id, event.detail === 0)}
            >
              {say(words.goTo, { name })}
            </button>
          )}
        </h3>
        {table.way === 'hands' && !isOpen && (
          <Hands
            count={table.hands[id] ?? 0}
            labels={{
              exact: say(words.handsFor, { name }),
              more: say(words.handsMore, { name }),
              fewer: say(words.handsFewer, { name }),
            }}
            onCount={(count) => moves.countHands(id, count)}
          />
        )}
      </div>
      {trader.door === 'gift' && <p class="small">{say(words.shut)}</p>}
      {returns !== null && owed === undefined && (
        <p class="small">{say(words.takesGifts, { thing: goodWords(world, returns) })}</p>
      )}
      {owed !== undefined && <p class="trader-owes">{say(words.owes, { thing: goodWords(world, owed) })}</p>}
      {!isOpen && (
        <>
          <p class="trader-label">{say(words.has)}</p>
          <ul class="things">
            {Object.entries(theirs).map(([good, count]) => (
              <li key={good}>
                <Thing world={world} good={good} count={count} />
              </li>
            ))}
            {Object.keys(theirs).length === 0 && <li class="quiet">{say(words.hasNothing)}</li>}
          </ul>
        </>
      )}
      {knowsWants ? (
        <>
          <p class="trader-label">{say(words.would)}</p>
          <Wants world={world} trader={trader} words={words} label={say(words.would)} />
        </>
      ) : (
        <button
          type="button"
          class="press trader-ask"
          data-ask={id}
          onClick={(event) => moves.ask(id, event.detail === 0)}
        >
          {say(words.ask, { name })}
        </button>
      )}
      {isOpen && (
        <OfferPanel
          world={world}
          words={words}
          table={table}
          moves={moves}
          name={name}
          yours={stand.hands[world.pupil.id] ?? {}}
          theirs={theirs}
        />
      )}
    </li>
  );
}
