import { useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import type { SortStore, SortTable } from '../stores/sort.ts';
import type { SortWords } from './sort-view.ts';
import type { SortMoves } from './use-sort-moves.ts';

interface Props {
  readonly words: SortWords;
  readonly table: SortTable;
  readonly store: SortStore;
  readonly moves: SortMoves;
  readonly left: number;
  readonly canAddTray: boolean;
}

/** The buttons under the trays, or under the record card. */
export function SortButtons({ words, table, store, moves, left, canAddTray }: Props) {
  const [isAsking, setAsking] = useState(false);
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={moves.backToTrays}>
          {say(words.backToTrays)}
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
            {say(words.sortAgain)}
          </button>
        )}
      </div>
    );
  }
  const canRead = left === 0;
  return (
    <>
      <div class="presses">
        <button type="button" class="press" aria-disabled={table.hand === null} onClick={moves.putBack}>
          {say(words.putBack)}
        </button>
        <button type="button" class="press" aria-disabled={table.past.length === 0} onClick={moves.stepBack}>
          {say(words.stepBack)}
        </button>
        {canAddTray && (
          <button
            type="button"
            class="press"
            onClick={() => store.addTray(say(words.trayDefault, { number: table.ownTrays.length + 1 }))}
          >
            {say(words.newTray)}
          </button>
        )}
        <button
          type="button"
          class="press"
          data-weight="main"
          data-move="read"
          aria-disabled={!canRead}
          onClick={moves.readRecord}
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
