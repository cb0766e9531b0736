import type { TalkActivity, Voice } from '../../shared/activities/scorers.ts';
import type { talk } from '../../shared/words/en/talk.ts';
import type { Template } from '../../shared/words/index.ts';

/** The words of a talk, resolved for a band. */
export type TalkWords = Readonly<Record<keyof typeof talk, Template>>;

/** A voice, with where it comes from in words. */
export interface VoiceView extends Pick<Voice, 'who' | 'says'> {
  readonly from: string;
}

export interface TalkProps {
  readonly lesson: string;
  readonly activity: TalkActivity;
  readonly words: TalkWords;
  readonly voices: readonly VoiceView[];
}
