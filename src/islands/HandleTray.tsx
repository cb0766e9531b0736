import type { HandlePiece } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import type { HandleTable } from '../stores/handle.ts';
import { Drawing } from './Drawing.tsx';
import type { HandleWords } from './handle-view.ts';

interface Props {
  readonly pieces: readonly HandlePiece[];
  readonly words: HandleWords;
  readonly table: HandleTable;
  readonly onTake: (place: number) => void;
}

/** The tray with its numbered places, in the order of passing; the piece that is held is marked, those met have a tick. */
export function HandleTray({ pieces, words, table, onTake }: Props) {
  return (
    <ol class="handle-tray" aria-label={say(words.passing)}>
      {pieces.map(({ id, plain }, index) => {
        const isMet = (table.met[id] ?? []).length > 0;
        const number = index + 1;
        return (
          <li key={id}>
            <button
              type="button"
              class="handle-place"
              data-piece={id}
              data-met={isMet}
              aria-pressed={index === table.at}
              aria-label={`${say(isMet ? words.pieceMet : words.piece, { number })}: ${plain}`}
              onClick={() => onTake(index)}
            >
              <span class="handle-number numbers" aria-hidden="true">
                {number}
              </span>
              <Drawing find={id} />
            </button>
          </li>
        );
      })}
    </ol>
  );
}
