import { uniform, type Stream } from '../chance/index.ts';

/** The drawing hand: a stream of chance with the questions a drawer asks of it. */
export interface Hand {
  /** A number between two others. */
  readonly within: (low: number, high: number) => number;
  /** A number as far above nought as below it. */
  readonly wobble: (size: number) => number;
  /** True in this share of cases. */
  readonly happens: (share: number) => boolean;
}

export function handOf(chance: Stream): Hand {
  const within = (low: number, high: number): number => low + uniform(chance) * (high - low);
  return {
    within,
    wobble: (size) => within(-size, size),
    happens: (share) => uniform(chance) < share,
  };
}
