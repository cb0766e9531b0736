import { say } from '../../shared/words/index.ts';
import { Drawing } from './Drawing.tsx';
import type { SortProps } from './sort-view.ts';

interface Props extends Pick<SortProps, 'activity' | 'words'> {
  readonly hand: string | null;
  readonly gone: ReadonlySet<string>;
  readonly isHands: boolean;
  readonly onLift: (find: string, byKey: boolean) => void;
}

/** Finds that come from several pits, laid out in rows to choose from. */
export function FindsBench({ activity, words, hand, gone, isHands, onLift }: Props) {
  return (
    <ul class="bench" aria-label={say(words.findsLabel)}>
      {activity.finds.map((find) => (
        <li key={find.id}>
          {gone.has(find.id) && find.id !== hand && !isHands ? (
            <span class="bench-trace numbers" aria-hidden="true">
              {find.smallFind}
            </span>
          ) : (
            <button
              type="button"
              class="bench-find"
              data-find={find.id}
              data-state={gone.has(find.id) ? 'counted' : 'here'}
              aria-pressed={find.id === hand}
              aria-label={say(words.findName, { number: find.smallFind, plain: find.plain })}
              onClick={(event) => onLift(find.id, event.detail === 0)}
            >
              <Drawing find={find.id} />
              <span class="numbers">{find.smallFind}</span>
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
