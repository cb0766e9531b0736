import type { Draft } from '../../shared/drafting/index.ts';
import { draftingWords as words } from '../../shared/words/en/drafting.ts';
import type { Drafted } from './protocol.ts';

type Parts = Draft['parts'];

const tellParts = (parts: Parts): readonly string[] =>
  parts
    .filter(({ weight }) => weight > 0)
    .map(({ name, value, weight, told }) => words.part(name, value, weight, told));

/** A draft as the Bench shows it: the reasons of the whole, then those of each activity under its title. */
export const tellDraft = (draft: Draft): Omit<Drafted, 'answer' | 'number'> => {
  const ofActivities = draft.activities.reduce((sum, { parts }) => sum + 1 + parts.length, 0);
  return {
    text: draft.text,
    // The activities' own reasons stand with them; what was claimed comes last.
    reasons: [...draft.reasons.slice(0, draft.reasons.length - ofActivities - 1), ...draft.reasons.slice(-1)],
    activities: draft.activities.map(({ title, summary, parts }) => ({
      title,
      summary,
      reasons: tellParts(parts),
    })),
    lacking: draft.lacking,
  };
};
