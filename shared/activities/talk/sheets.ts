import type { TalkActivity } from './activity.ts';

/** For a pupil: the question, room to stand before and after, the voices, and what would change one's mind. */
export interface TalkSheet extends Pick<
  TalkActivity,
  'title' | 'question' | 'voices' | 'evidence' | 'stances'
> {
  readonly part: 'talk-sheet';
}

/** For the lead: the same, with where each voice comes from. */
export interface TalkNotes extends Pick<
  TalkActivity,
  'title' | 'question' | 'voices' | 'evidence' | 'stances'
> {
  readonly part: 'talk-notes';
}
