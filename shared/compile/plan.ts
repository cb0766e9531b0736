import type { Activity } from '../activities/index.ts';
import type { ClaimGrade, Evidence } from '../curriculum/index.ts';
import type { WrittenNotes } from '../lesson/index.ts';
import type { Band } from '../library/bands.ts';
import type { Status } from '../library/status.ts';
import type { Setting, StationUse } from '../safety/index.ts';

/** Where a lesson is held that says nothing of it. */
export const USUAL_SETTING: Setting = 'classroom';

/** What stands in a lesson, in order: prose, or an activity by its id. */
export type PlanPart =
  | { readonly part: 'prose'; readonly html: string }
  | { readonly part: 'activity'; readonly activity: string };

/** A claim the lesson earns: what is asked, by whom, and the activities that show it. */
export interface PlanClaim {
  readonly outcome: string;
  /** The publisher's code; null where it has none. */
  readonly code: string | null;
  readonly framework: string;
  readonly frameworkName: string;
  readonly stage: string;
  readonly subject: string;
  readonly summary: string;
  readonly status: Status;
  readonly source: string;
  readonly sourceAt: string;
  readonly grade: ClaimGrade;
  readonly evidence: readonly Evidence[];
}

/** What runs beside the lesson, as its head states it: nothing in it is refused. */
export interface PlanVisit {
  readonly setting: Setting;
  readonly stations: readonly StationUse[];
}

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
  readonly claims: readonly PlanClaim[];
  /** An adult reads the words of the lesson to the pupils. */
  readonly readAloud?: true;
  /** Left out where the lesson states no visit. */
  readonly visit?: PlanVisit;
  /** What the lead adds to the teacher notes; left out where nothing is added. */
  readonly notes?: WrittenNotes;
}
