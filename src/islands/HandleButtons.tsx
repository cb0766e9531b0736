import { say } from '../../shared/words/index.ts';
import { metPieces, type HandleTable } from '../stores/handle.ts';
import { ClearAsk } from './ClearAsk.tsx';
import type { HandleWords } from './handle-view.ts';

interface Props {
  readonly words: HandleWords;
  readonly table: HandleTable;
  readonly onRead: () => void;
  readonly onBack: () => void;
  readonly onAgain: () => void;
}

/** The buttons under the tray, or under the record card. */
export function HandleButtons({ words, table, onRead, onBack, onAgain }: Props) {
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={onBack}>
          {say(words.backToTray)}
        </button>
        <ClearAsk
          press={say(words.startAgain)}
          ask={say(words.clearAsk)}
          yes={say(words.clearYes)}
          no={say(words.clearNo)}
          onYes={onAgain}
        />
      </div>
    );
  }
  const canRead = metPieces(table).length > 0;
  return (
    <>
      <div class="presses">
        <button
          type="button"
          class="press"
          data-weight="main"
          data-move="read"
          aria-disabled={!canRead}
          onClick={() => {
            if (canRead) onRead();
          }}
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
