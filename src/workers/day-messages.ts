import type {
  AimMinutes,
  Day,
  DayEdit,
  DayPlan,
  HandRotation,
  InHand,
  Progress,
  ToldConflict,
} from '../../shared/day/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';

/** Asks for a day file to be read, changed first where there are edits. Turns count up: an old reply is let go. */
export interface ReaderAsk {
  readonly turn: number;
  readonly file: string;
  readonly text: string;
  readonly edits: readonly DayEdit[];
  /** Where the safety rules are served. */
  readonly rulesAt: string;
}

export interface ReaderReply {
  readonly turn: number;
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly day: Day | null;
  /** The file as plain data, for a form; null where it is no YAML. */
  readonly parts: unknown;
}

export interface PlannerAsk {
  readonly day: Day;
  readonly seconds: number;
  readonly inHand: InHand | null;
  /** Where the solver is served. */
  readonly solverAt: string;
}

/** What the planner says, in this order: progress, then how it ended, then the rotation made by hand. */
export type PlannerTold =
  | ({ readonly kind: 'progress' } & Progress)
  | {
      readonly kind: 'plan';
      readonly status: 'optimal' | 'bounded';
      readonly plan: DayPlan;
      readonly minutes: AimMinutes;
      readonly bound: AimMinutes;
      readonly movedCells: number | null;
    }
  | ({ readonly kind: 'impossible' } & ToldConflict)
  | { readonly kind: 'unknown' }
  | { readonly kind: 'rotation'; readonly rotation: HandRotation }
  | { readonly kind: 'failed'; readonly message: string };
