import type { Band } from '../library/bands.ts';

/** What one activity of a compiled lesson asks, in the terms claims are judged by. */
export interface ActivityFacts {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  /** Conditions the compiled activity meets by what it asks. */
  readonly met: readonly string[];
  /** Conditions the lead vouches for. */
  readonly vouched: readonly string[];
  /** How many things a pupil handles or counts at most; null where none are counted. */
  readonly things: number | null;
}

/** What a compiled lesson asks. */
export interface LessonFacts {
  readonly bands: readonly Band[];
  /** The site is made up: it is nobody's own place. */
  readonly isInvented: boolean;
  /** The site's years BCE, oldest first. */
  readonly fromBce: number;
  readonly toBce: number;
  readonly activities: readonly ActivityFacts[];
}
