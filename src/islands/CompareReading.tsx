import type { Keeps } from '../../shared/assemblage/index.ts';
import { say } from '../../shared/words/index.ts';
import type { CompareWords } from './compare-view.ts';

interface Props {
  readonly words: CompareWords;
  readonly reading: string | null;
  readonly doubts: readonly string[];
  /** What a shuffle keeps; null where nothing is shuffled. */
  readonly keeps: Keeps | null;
}

/** What archaeologists make of it, and beside it the reasons to doubt that. */
export function CompareReading({ words, reading, doubts: written, keeps }: Props) {
  const ours =
    keeps === null
      ? [words.doubtFew]
      : [words.doubtNotMeant, keeps === 'finds' ? words.doubtPieces : words.doubtCommon, words.doubtFew];
  const doubts = [...written, ...ours.map((doubt) => say(doubt))];
  return (
    <div class="compare-reading">
      {reading !== null && (
        <div>
          <h4>{say(words.readingTitle)}</h4>
          <p>{reading}</p>
        </div>
      )}
      <div>
        <h4>{say(words.doubtsTitle)}</h4>
        <ul>
          {doubts.map((doubt) => (
            <li key={doubt}>{doubt}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}
