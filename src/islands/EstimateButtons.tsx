import { useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import type { EstimateTable } from '../stores/estimate.ts';
import type { EstimateWords } from './estimate-view.ts';

interface Props {
  readonly words: EstimateWords;
  readonly table: EstimateTable;
  readonly canRead: boolean;
  readonly onRead: () => void;
  readonly onBack: () => void;
  readonly onStartAgain: () => void;
}

/** The buttons under the answer, or under the record card. */
export function EstimateButtons({ words, table, canRead, onRead, onBack, onStartAgain }: Props) {
  const [isAsking, setAsking] = useState(false);
  if (!table.isRead) {
    return (
      <>
        <div class="presses">
          <button
            type="button"
            class="press"
            data-weight="main"
            data-move="read"
            aria-disabled={!canRead}
            onClick={() => canRead && onRead()}
          >
            {say(words.readRecord)}
          </button>
        </div>
        <p class="small quiet">
          {canRead ? '' : `${say(words.notYet)} `}
          {say(table.isKept ? words.kept : words.notKept)}
        </p>
      </>
    );
  }
  return (
    <div class="presses">
      <button type="button" class="press" onClick={onBack}>
        {say(words.backToAnswer)}
      </button>
      {isAsking ? (
        <span class="presses-ask">
          {say(words.clearAsk)}
          <button
            type="button"
            class="press"
            onClick={() => {
              setAsking(false);
              onStartAgain();
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
          {say(words.startAgain)}
        </button>
      )}
    </div>
  );
}
