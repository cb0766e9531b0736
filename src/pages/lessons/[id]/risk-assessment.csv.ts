import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { riskCsv, riskDraft } from '../../../../shared/safety/index.ts';
import { catalogues } from '../../../../shared/words/index.ts';
import { lessonSafety } from '../../../../shared/telling/lesson-safety.ts';
import { paperPaths } from '../../../loaders/paper-paths.ts';

export const getStaticPaths = paperPaths;

/** The draft as a table, with what it is and is not in the rows above. */
export const GET: APIRoute<InferGetStaticPropsType<typeof getStaticPaths>> = ({ props }) => {
  const { plan, library } = props;
  const words = catalogues.en.safetyPapers;
  const { hazards } = lessonSafety(plan, library, 30);
  const above = [words.draft, words.first, plan.title, words.marks];
  return new Response(riskCsv(riskDraft(library.safety, { hazards }), above), {
    headers: { 'content-type': 'text/csv; charset=utf-8' },
  });
};
