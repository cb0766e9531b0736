import { say } from '../../shared/words/index.ts';
import { laidCards, type OrderTable } from '../stores/order.ts';
import { ClearAsk } from './ClearAsk.tsx';
import type { OrderWords } from './order-view.ts';
import type { OrderMoves } from './use-order-moves.ts';

interface Props {
  readonly words: OrderWords;
  readonly table: OrderTable;
  readonly moves: OrderMoves;
}

/** The buttons under the line, or under the record card. */
export function OrderButtons({ words, table, moves }: Props) {
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={moves.backToLine}>
          {say(words.backToLine)}
        </button>
        <ClearAsk
          press={say(words.orderAgain)}
          ask={say(words.clearAsk)}
          yes={say(words.clearYes)}
          no={say(words.clearNo)}
          onYes={moves.startAgain}
        />
      </div>
    );
  }
  const left = table.line.length - laidCards(table.line).length;
  const canRead = left === 0;
  return (
    <>
      <div class="presses">
        {table.way === 'hands' && !canRead ? (
          <button type="button" class="press" onClick={moves.layMost}>
            {say(words.layMost)}
          </button>
        ) : (
          <button type="button" class="press" aria-disabled={table.hand === null} onClick={moves.putBack}>
            {say(words.putBack)}
          </button>
        )}
        <button type="button" class="press" aria-disabled={table.past.length === 0} onClick={moves.stepBack}>
          {say(words.stepBack)}
        </button>
        <button
          type="button"
          class="press"
          data-weight="main"
          data-move="read"
          aria-disabled={!canRead}
          onClick={() => {
            if (canRead) moves.readRecord();
          }}
        >
          {say(words.readRecord)}
        </button>
      </div>
      <p class="small quiet">
        {canRead ? '' : `${say(words.notYet, { count: left })} `}
        {say(table.isKept ? words.kept : words.notKept)}
      </p>
    </>
  );
}
