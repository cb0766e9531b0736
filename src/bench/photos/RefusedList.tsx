import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';

interface Props {
  /** Why files were not taken in, a sentence each. */
  readonly refused: readonly string[];
  readonly clear: () => void;
}

/** Files that were not taken in, each with its reason. */
export function RefusedList({ refused, clear }: Props) {
  return (
    <div role="alert">
      {refused.length > 0 && (
        <div class="photo-refused">
          <h2>{words.refusedTitle}</h2>
          <ul class="prose-list">
            {refused.map((sentence, index) => (
              <li key={index}>{sentence}</li>
            ))}
          </ul>
          <button type="button" class="press small" onClick={clear}>
            {words.refusedClear}
          </button>
        </div>
      )}
    </div>
  );
}
