import { say } from '../../shared/words/index.ts';
import type { SortFind } from '../../shared/activities/scorers.ts';
import type { SortWords } from './sort-view.ts';

interface Props {
  readonly find: SortFind | null;
  readonly words: SortWords;
  readonly isDone: boolean;
  /** What shows of it, for those who hear the drawing. */
  readonly seen: string;
}

/** What is in the hand, held close: drawn large with its scale, and said in the grammar of a museum label. */
export function Hand({ find, words, isDone, seen }: Props) {
  if (find === null) {
    return (
      <div class="hand" data-state="empty">
        <p class="quiet">{say(isDone ? words.handDone : words.handEmpty)}</p>
      </div>
    );
  }
  const { lengthMm, widthMm, thicknessMm } = find;
  return (
    <div class="hand" data-state="held">
      <svg class="hand-drawing" aria-hidden="true">
        <use href={`#full-${find.id}`} />
      </svg>
      <div class="hand-label">
        <p class="hand-name">{find.plain}</p>
        <p class="unseen">{seen}</p>
        <p class="numbers">
          {say(words.sizeLine, { length: lengthMm, width: widthMm, thickness: thicknessMm })}
          {find.massG !== null && <> · {say(words.massLine, { mass: find.massG })}</>}
          {find.count > 1 && <> · {say(words.countLine, { count: find.count })}</>}
        </p>
        <p class="quiet numbers">
          {say(words.pitLine, { pit: find.pit.replace(/^P/, '') })} <span class="triangle">△</span>{' '}
          {find.smallFind}
        </p>
      </div>
    </div>
  );
}
