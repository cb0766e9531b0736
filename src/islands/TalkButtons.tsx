import { say } from '../../shared/words/index.ts';
import type { TalkTable } from '../stores/talk.ts';
import { ClearAsk } from './ClearAsk.tsx';
import type { TalkWords } from './talk-view.ts';

interface Props {
  readonly words: TalkWords;
  readonly table: TalkTable;
  readonly canRead: boolean;
  readonly onRead: () => void;
  readonly onBack: () => void;
  readonly onAgain: () => void;
}

/** The buttons under the talk, or under the record card. */
export function TalkButtons({ words, table, canRead, onRead, onBack, onAgain }: Props) {
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={onBack}>
          {say(words.backToTalk)}
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
