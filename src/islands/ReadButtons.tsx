import { say, type Template } from '../../shared/words/index.ts';
import { ClearAsk } from './ClearAsk.tsx';

type Said = 'readRecord' | 'notYet' | 'kept' | 'notKept' | 'startAgain' | 'clearAsk' | 'clearYes' | 'clearNo';

interface Props {
  readonly words: Readonly<Record<Said, Template>>;
  /** What leads back from the record card. */
  readonly back: Template;
  readonly table: { readonly isRead: boolean; readonly isKept: boolean };
  readonly canRead: boolean;
  readonly onRead: () => void;
  readonly onBack: () => void;
  readonly onAgain: () => void;
}

/** The buttons under an activity whose record is read in one step, or under its record card. */
export function ReadButtons({ words, back, table, canRead, onRead, onBack, onAgain }: Props) {
  if (table.isRead) {
    return (
      <div class="presses">
        <button type="button" class="press" onClick={onBack}>
          {say(back)}
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
