import type { Activity, ActivityOf, KindName } from '../../shared/activities/index.ts';
import { catalogues, say } from '../../shared/words/index.ts';

const words = catalogues.en.site;

const lines: { readonly [K in KindName]: (activity: ActivityOf<K>) => string } = {
  sort: ({ finds, question }) => {
    const pits = [...new Set(finds.map(({ pit }) => pit.replace(/^P/, '')))].toSorted();
    return say(words.notesSort, {
      finds: finds.length,
      pits: say(words.notesPits, { count: pits.length, pits: pits.join(', ') }),
      question,
    });
  },
};

/** What pupils do in an activity, in one line of the teacher notes. */
export const notesLine = (activity: Activity): string => lines[activity.kind](activity);
