import type { KindName } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { catalogues } from '../../shared/words/index.ts';

const words: { readonly [K in KindName]: string } = {
  estimate: catalogues.en.estimatePapers.notesScore,
  sort: catalogues.en.site.notesScore,
};

/** What the score says, for each kind that a lesson holds. */
export const notesScore = (plan: Plan): readonly string[] => [
  ...new Set(plan.activities.map(({ kind }) => words[kind])),
];
