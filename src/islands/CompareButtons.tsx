import { say } from '../../shared/words/index.ts';
import type { CompareTable } from '../stores/compare.ts';
import { ClearAsk } from './ClearAsk.tsx';
import type { CompareWords } from '../../shared/telling/compare-words.ts';
import type { CompareMoves } from './use-compare-moves.ts';

interface Props {
  readonly words: CompareWords;
  readonly table: CompareTable;
  readonly moves: CompareMoves;
  /** Questions not yet answered. */
  readonly left: number;
  /** Things are taken in the hand here, and may be put back. */
  readonly hasHand: boolean;
}

/** The buttons under the pits, or under the record card. */
export function CompareButtons({ words, table, moves, left, hasHand }: Props) {
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={moves.backToPits}>
          {say(words.backToPits)}
        </button>
        <ClearAsk
          press={say(words.again)}
          ask={say(words.clearAsk)}
          yes={say(words.clearYes)}
          no={say(words.clearNo)}
          onYes={moves.startAgain}
        />
      </div>
    );
  }
  const canRead = left === 0;
  return (
    <>
      <div class="presses">
        {hasHand && (
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
