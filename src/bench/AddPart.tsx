import { bench as words } from '../../shared/words/en/bench.ts';
import { kindMeanings } from '../../shared/words/en/bench-kinds.ts';

interface Props {
  readonly kinds: readonly string[];
  /** Null puts words in. */
  readonly add: (kind: string | null) => void;
}

/** What can be put in at the end: words, or an activity of a kind, each with what it is. */
export function AddPart({ kinds, add }: Props) {
  const choices = [
    { kind: null, name: words.addProse, means: words.proseMeans },
    ...kinds.map((kind) => ({ kind, name: kind, means: kindMeanings[kind] ?? '' })),
  ];
  return (
    <details class="add-part">
      <summary>{words.addTitle}</summary>
      <ul>
        {choices.map(({ kind, name, means }) => (
          <li key={name}>
            <button
              type="button"
              class="press"
              onClick={() => {
                add(kind);
              }}
            >
              {name}
            </button>
            <span class="small quiet">{means}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
