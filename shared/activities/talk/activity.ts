import type { Status } from '../../library/status.ts';
import type { ActivityBase } from '../activity-base.ts';

/** Where a voice comes from: a published work, what people in the trade say, or made up for the lesson. */
export type VoiceFrom =
  | { readonly from: 'work'; readonly citation: string; readonly status: Status }
  | { readonly from: 'practice' }
  | { readonly from: 'invented' };

/** What some archaeologists argue. */
export interface Voice {
  readonly who: string;
  readonly says: string;
  readonly source: VoiceFrom;
}

/** Something that can be chosen, by a short id. */
export interface TalkChoice {
  readonly id: string;
  readonly words: string;
}

/** A question with no right answer. */
export interface TalkActivity extends ActivityBase {
  readonly kind: 'talk';
  readonly question: string;
  /** Dealt by the seed, so that none is always the first or the last word. */
  readonly voices: readonly Voice[];
  /** What would change our mind. */
  readonly evidence: readonly TalkChoice[];
  /** What a group can stand by; [] where nobody is asked to take a stand. */
  readonly stances: readonly TalkChoice[];
}
