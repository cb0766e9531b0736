import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { scoreLaid } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { laidCards, openOrder } from '../stores/order.ts';
import { OrderButtons } from './OrderButtons.tsx';
import { OrderCards } from './OrderCards.tsx';
import { OrderLine } from './OrderLine.tsx';
import { OrderRecord } from './OrderRecord.tsx';
import type { OrderProps } from './order-view.ts';
import { useOrderMoves } from './use-order-moves.ts';
import { WaysToPlay } from './WaysToPlay.tsx';
import { noted } from '../stores/plays.ts';

/** An order on screen: choose a card, lay it on the line, move it about, read the record. */
export function Order({ lesson, activity, words, drawn, showsWorking }: OrderProps) {
  const store = useMemo(() => openOrder(lesson, activity), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const moves = useOrderMoves({ root, store, activity, words });
  const view = { activity, words, drawn };
  const turn = laidCards(table.line).length + 1;
  const who = say(turn % 2 === 1 ? words.pairsFirst : words.pairsSecond);
  const ways = [
    { way: 'alone', name: say(words.wayAlone), how: say(words.howTo) },
    {
      way: 'pairs',
      name: say(words.wayPairs),
      how: `${say(words.pairsHow)} ${say(words.pairsTurn, { turn, who })}`,
    },
    { way: 'hands', name: say(words.wayHands), how: say(words.handsHow) },
  ] as const;
  return (
    <div class="order" ref={root} data-held={table.hand !== null} onKeyDown={moves.onKeyDown}>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <OrderRecord
            {...view}
            showsWorking={showsWorking}
            line={table.line}
            result={scoreLaid(activity, noted({ activity: activity.id, laid: [...laidCards(table.line)] }))}
          />
        </section>
      ) : (
        <>
          <WaysToPlay label={say(words.ways)} ways={ways} chosen={table.way} onChoose={store.playAs} />
          <div class="order-table">
            <section class="order-cards">
              <h3>{say(words.cardsTitle)}</h3>
              <OrderCards {...view} table={table} store={store} onLift={moves.lift} />
            </section>
            <section class="order-line">
              <h3>{say(words.lineTitle)}</h3>
              <OrderLine {...view} table={table} moves={moves} />
            </section>
          </div>
        </>
      )}
      <p class="sort-said" role="status">
        {moves.said}
      </p>
      <OrderButtons words={words} table={table} moves={moves} />
    </div>
  );
}
