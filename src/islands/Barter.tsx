import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { standing } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import { openBarter } from '../stores/barter.ts';
import { goodWords, type BarterProps } from './barter-view.ts';
import { BarterButtons } from './BarterButtons.tsx';
import { BarterRecord } from './BarterRecord.tsx';
import { BarterWays } from './BarterWays.tsx';
import { Chain } from './Chain.tsx';
import { Thing } from './Thing.tsx';
import { TraderSheet } from './TraderSheet.tsx';
import { useBarterMoves } from './use-barter-moves.ts';
import { Wants } from './Wants.tsx';

/** A gathering on screen: go to someone, hear what they would like, swap, come home with the aim. */
export function Barter({ lesson, activity, words, refusals, showsWorking, showsViews }: BarterProps) {
  const store = useMemo(() => openBarter(lesson, activity), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const moves = useBarterMoves({ root, store, table, activity, words, refusals });
  const { world } = activity;
  const stand = standing(world, table.swaps);
  const aim = goodWords(world, world.aim);
  return (
    <div class="barter" ref={root} data-way={table.way} onKeyDown={moves.onKeyDown}>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <BarterRecord swaps={table.swaps} {...{ activity, words, showsWorking, showsViews }} />
        </section>
      ) : (
        <>
          <BarterWays words={words} table={table} store={store} moves={moves} />
          <div class="barter-ground">
            <section class="pack" aria-label={say(words.yours)}>
              <h3 class="trader-name">{say(words.you)}</h3>
              <p class="trader-label">{say(words.youHave)}</p>
              <ul class="things">
                {Object.entries(stand.hands[world.pupil.id] ?? {}).map(([good, count]) => (
                  <li key={good}>
                    <Thing world={world} good={good} count={count} />
                  </li>
                ))}
              </ul>
              {stand.spoiled.map((good) => (
                <p key={good} class="small">
                  {say(words.spoiled, { thing: goodWords(world, good) })}
                </p>
              ))}
              <p class="trader-label">{say(words.youWould)}</p>
              <Wants world={world} trader={world.pupil} words={words} label={say(words.youWould)} />
              {world.bundle > 1 && <p class="small quiet">{say(words.worthNote)}</p>}
              <p class="trader-label">{say(words.chainTitle)}</p>
              <Chain world={world} words={words} swaps={table.swaps} label={say(words.chainTitle)} />
            </section>
            <ul class="traders" aria-label={say(words.everyone)}>
              {world.traders.map((trader) => (
                <TraderSheet key={trader.id} {...{ activity, words, trader, table, moves, stand }} />
              ))}
            </ul>
          </div>
        </>
      )}
      <p class="unseen" role="status">
        {moves.said}
      </p>
      <BarterButtons words={words} table={table} moves={moves} aim={aim} isHome={stand.isHome} />
    </div>
  );
}
