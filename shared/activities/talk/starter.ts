import { starters } from '../../words/en/starters.ts';

/** A talk to begin from: a question, two who argue and what would settle it, all to be written. */
export const startTalk = (): Readonly<Record<string, unknown>> => ({
  title: starters.talkTitle,
  question: starters.talkQuestion,
  voices: [
    { who: starters.talkOne, says: starters.talkOneSays, source: 'common-practice' },
    { who: starters.talkOther, says: starters.talkOtherSays, source: 'common-practice' },
  ],
  evidence: [starters.talkEvidence],
  minutes: 10,
});
