import type { HandlePiece as Piece, Sense } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { isWords, type HandleWords } from './handle-view.ts';

interface Props {
  readonly piece: Piece;
  /** From 0. */
  readonly place: number;
  readonly count: number;
  readonly words: HandleWords;
  readonly seen: string;
  readonly met: readonly Sense[];
  readonly onMeet: (sense: Sense) => void;
  readonly onTake: (place: number) => void;
}

/** The piece that is held: drawn large, how to hold it, what to look, feel and listen for. */
export function HandlePiece({ piece, place, count, words, seen, met, onMeet, onTake }: Props) {
  const { lengthMm, widthMm, thicknessMm } = piece.drawing;
  const names = { look: words.look, feel: words.feel, listen: words.listen };
  const done = { look: words.didLook, feel: words.didFeel, listen: words.didListen };
  const size = { length: lengthMm, width: widthMm, thickness: thicknessMm };
  const isLast = place + 1 === count;
  return (
    <section class="handle-piece" aria-label={say(words.pieceLine, { number: place + 1, count })}>
      <div class="handle-shown">
        <svg class="hand-drawing" aria-hidden="true">
          <use href={`#full-${piece.id}`} />
        </svg>
        <div class="hand-label">
          <p class="hand-name">{piece.plain}</p>
          <p class="unseen">{seen}</p>
          <p class="handle-is">{say(isWords(words)[piece.is])}</p>
          <p class="quiet numbers">
            {say(piece.is === 'original' ? words.sizeLine : words.sizeOf, size)} ·{' '}
            {say(words.pitLine, { pit: piece.pit.replace(/^P/, '') })} <span class="triangle">△</span>{' '}
            {piece.smallFind}
          </p>
        </div>
      </div>
      <div class="handle-do">
        <p class="handle-hold">
          <strong>{say(words.holdTitle)}</strong> {piece.hold[0]?.words}
        </p>
        <ul class="handle-senses">
          {piece.prompts.map(({ sense, says }) => (
            <li key={sense}>
              <p>
                <strong>{say(names[sense])}</strong> {says[0]?.words}
              </p>
              <button
                type="button"
                class="press handle-met"
                data-sense={sense}
                aria-pressed={met.includes(sense)}
                onClick={() => onMeet(sense)}
              >
                {say(done[sense])}
              </button>
            </li>
          ))}
        </ul>
        <div class="presses">
          <button
            type="button"
            class="press"
            aria-disabled={place === 0}
            onClick={() => {
              if (place > 0) onTake(place - 1);
            }}
          >
            {say(words.earlier)}
          </button>
          <button
            type="button"
            class="press"
            data-move="pass"
            aria-disabled={isLast}
            onClick={() => onTake(place + 1)}
          >
            {say(words.passOn)}
          </button>
        </div>
      </div>
    </section>
  );
}
