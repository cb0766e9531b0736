import { starters } from '../../words/en/starters.ts';

/** A talk to begin from: two voices and what would change our mind, all to be written by the lead. */
export const startTalk = (): Readonly<Record<string, unknown>> => ({
  title: starters.talkTitle,
  question: starters.talkQuestion,
  voices: [
    { who: starters.talkWhoOne, says: starters.talkSaysOne, source: 'invented' },
    { who: starters.talkWhoTwo, says: starters.talkSaysTwo, source: 'invented' },
  ],
  evidence: [starters.talkEvidence],
  minutes: 10,
});
