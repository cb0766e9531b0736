import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { riskCsv, riskDraft } from '../../../../shared/safety/index.ts';
import { say } from '../../../../shared/words/index.ts';
import { safetySheet as words } from '../../../../shared/words/en/safety-sheet.ts';
import { lessonReport } from '../../../components/lesson-safety.ts';
import { paperPaths } from '../../../loaders/paper-paths.ts';

export const getStaticPaths = paperPaths;

/** Marks the file as UTF-8 for spreadsheets that would guess otherwise. */
const BYTE_ORDER_MARK = '\uFEFF';

/** The draft as a file to open in a spreadsheet. */
export const GET: APIRoute<InferGetStaticPropsType<typeof getStaticPaths>> = ({ props }) => {
  const { plan, library } = props;
  const rules = library.safety;
  const above = [
    words.firstTitle,
    words.draftTitle,
    say(words.tableLead, { title: plan.title }),
    rules.caution.short,
    rules.caution.neverLine,
  ];
  const table = riskCsv(riskDraft(rules, lessonReport(rules, plan)), above);
  return new Response(`${BYTE_ORDER_MARK}${table}`, {
    headers: { 'content-type': 'text/csv; charset=utf-8' },
  });
};
