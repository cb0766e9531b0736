import { useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import type { BarterTable } from '../stores/barter.ts';
import type { BarterWords } from './barter-view.ts';
import type { BarterMoves } from './use-barter-moves.ts';

interface Props {
  readonly words: BarterWords;
  readonly table: BarterTable;
  readonly moves: BarterMoves;
  readonly aim: string;
  readonly isHome: boolean;
}

/** The buttons under the chain, or under the record card. */
export function BarterButtons({ words, table, moves, aim, isHome }: Props) {
  const [isAsking, setAsking] = useState(false);
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={moves.backToSwaps}>
          {say(words.backToSwaps)}
        </button>
        {isAsking ? (
          <span class="presses-ask">
            {say(words.clearAsk)}
            <button
              type="button"
              class="press"
              onClick={() => {
                setAsking(false);
                moves.startAgain();
              }}
            >
              {say(words.clearYes)}
            </button>
            <button type="button" class="press" onClick={() => setAsking(false)}>
              {say(words.clearNo)}
            </button>
          </span>
        ) : (
          <button type="button" class="press" onClick={() => setAsking(true)}>
            {say(words.swapAgain)}
          </button>
        )}
      </div>
    );
  }
  const canRead = table.swaps.length > 0;
  return (
    <>
      <div class="presses">
        <button type="button" class="press" aria-disabled={!canRead} onClick={moves.stepBack}>
          {say(words.stepBack)}
        </button>
        <button
          type="button"
          class="press"
          {...(isHome ? { 'data-weight': 'main' } : {})}
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
        {say(isHome ? words.home : words.notYet, { aim })} {say(table.isKept ? words.kept : words.notKept)}
      </p>
    </>
  );
}
