import { goodDrawingId } from './good-drawing-id.ts';

interface Props {
  readonly good: string;
  readonly words: string;
  readonly worth?: string;
}

/** A good's small drawing with words beside it. */
export function GoodThing({ good, words, worth }: Props) {
  return (
    <span class="thing">
      <svg class="thing-drawing" aria-hidden="true" focusable="false">
        <use href={`#${goodDrawingId(good)}`} />
      </svg>
      <span>
        {words}
        {worth !== undefined && <span class="thing-worth numbers"> {worth}</span>}
      </span>
    </span>
  );
}
