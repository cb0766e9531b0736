import type { Activity } from '../activities/index.ts';
import type { Band } from '../library/bands.ts';
import type { Status } from '../library/status.ts';

/** What stands in a lesson, in order: prose, or an activity by its id. */
export type PlanPart =
  | { readonly part: 'prose'; readonly html: string }
  | { readonly part: 'activity'; readonly activity: string };

/** A compiled lesson: plain JSON, complete; everything downstream reads only this. */
export interface Plan {
  readonly format: 'pitlore-plan/1';
  readonly title: string;
  readonly about: string | null;
  readonly language: 'en';
  readonly bands: readonly Band[];
  readonly minutes: number;
  readonly seed: string;
  readonly site: {
    readonly id: string;
    readonly name: string;
    readonly code: string;
    readonly status: Status;
    readonly story: string;
    readonly organisation: string;
    readonly periodLabel: string;
    readonly periodFromBce: number;
    readonly periodToBce: number;
    readonly periodStatus: Status;
    readonly periodNote: string;
  };
  readonly parts: readonly PlanPart[];
  readonly activities: readonly Activity[];
}
