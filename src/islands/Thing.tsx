import type { World } from '../../shared/bartering/index.ts';
import { goodWords } from './barter-view.ts';

interface Props {
  readonly world: World;
  readonly good: string;
  readonly count?: number;
  readonly worth?: string;
}

/** The id of a good's drawing in the page. */
export const goodDrawingId = (good: string): string => `good-${good}`;

/** A good with its small drawing and its words. */
export function Thing({ world, good, count = 1, worth }: Props) {
  return (
    <span class="thing">
      <svg class="thing-drawing" aria-hidden="true" focusable="false">
        <use href={`#${goodDrawingId(good)}`} />
      </svg>
      <span>
        {goodWords(world, good, count)}
        {worth !== undefined && <span class="thing-worth numbers"> {worth}</span>}
      </span>
    </span>
  );
}
