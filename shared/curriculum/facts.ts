import type { ClaimGrade } from './curricula.ts';
import type { Band } from '../library/bands.ts';

/** Conditions an activity meets for some bands only. */
export interface MetIn {
  readonly bands: readonly Band[];
  readonly met: readonly string[];
}

/** What one activity of a compiled lesson asks, in the terms claims are judged by. */
export interface ActivityFacts {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  /** Conditions the compiled activity meets by what it asks of every band. */
  readonly met: readonly string[];
  /** Conditions it meets only in the bands that are asked so; left out where all bands are asked alike. */
  readonly metIn?: readonly MetIn[];
  /** Conditions the lead vouches for. */
  readonly vouched: readonly string[];
  /** The furthest grade that what the compiler sees of it can show; left out where a play of it is evidence. */
  readonly most?: ClaimGrade;
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
