import type { Keeps } from '../../shared/assemblage/index.ts';
import { say } from '../../shared/words/index.ts';
import { doubtLines, type CompareWords } from '../../shared/telling/compare-words.ts';

interface Props {
  readonly words: CompareWords;
  readonly reading: string | null;
  readonly doubts: readonly string[];
  /** What a shuffle keeps; null where nothing is shuffled. */
  readonly keeps: Keeps | null;
  /** One step below the heading it stands under: on a record card h4, on paper h3. */
  readonly heading?: 'h3' | 'h4';
}

/** What archaeologists make of it, and beside it the reasons to doubt that. */
export function CompareReading({ words, reading, doubts: written, keeps, heading: Heading = 'h4' }: Props) {
  const doubts = doubtLines(words, written, keeps);
  return (
    <div class="compare-reading">
      {reading !== null && (
        <div>
          <Heading>{say(words.readingTitle)}</Heading>
          <p>{reading}</p>
        </div>
      )}
      <div>
        <Heading>{say(words.doubtsTitle)}</Heading>
        <ul>
          {doubts.map((doubt) => (
            <li key={doubt}>{doubt}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}
