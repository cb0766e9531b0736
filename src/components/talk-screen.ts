import type { ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { youngest } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import type { TalkProps } from '../islands/talk-view.ts';
import { voiceFrom } from '../../shared/telling/talk-words.ts';

/** What a page hands to a talk on screen. */
export const talkScreen = (lesson: string, plan: Plan, activity: ActivityOf<'talk'>): TalkProps => ({
  lesson,
  activity,
  words: wordsFor(catalogues.en.talk, youngest(plan.bands)),
  voices: activity.voices.map((voice) => ({ who: voice.who, says: voice.says, from: voiceFrom(voice) })),
});
