import type { Plan } from '../compile/index.ts';
import { pitsShown } from '../telling/pits-shown.ts';
import { scoreNotes } from '../telling/score-notes.ts';
import { statusWords } from '../telling/status-words.ts';
import { catalogues, say } from '../words/index.ts';
import { cell, quiet, text, type NotesBlock, type NotesSection } from './blocks.ts';
import type { Cited } from './cited.ts';

const { site: words, notes } = catalogues.en;

/** The outcomes a lesson earns: what is asked, how far it goes, and where a pupil will have done it. */
export function claimsSection({ claims }: Plan): readonly NotesSection[] {
  if (claims.length === 0) return [];
  const rows = claims.map((claim) => [
    cell(
      `${claim.frameworkName}, ${claim.stage}${claim.code === null ? '' : `, ${claim.code}`}: ${claim.summary}`,
      [`${claim.source}, ${claim.sourceAt} (${statusWords(claim.status)})`],
    ),
    cell(claim.grade),
    cell(
      claim.evidence
        .map(
          ({ title, means, by, bands }) =>
            `${title}${bands === undefined ? '' : ` (${catalogues.en.agesOf(bands)})`}: ${means}${by === 'lead' ? ` (${words.claimsVouched})` : ''}`,
        )
        .join('. '),
    ),
  ]);
  return [
    {
      id: 'claims',
      title: words.claimsTitle,
      blocks: [
        text(words.claimsLead),
        {
          block: 'table',
          heads: [words.claimsOutcome, words.claimsGrade, words.claimsWhere],
          rows,
          narrow: [1],
          isNameWide: true,
        },
      ],
    },
  ];
}

/** The pits shown, in plan and section, and the site to read out. */
export function siteSection(plan: Plan): NotesSection {
  const { site } = plan;
  const pits = pitsShown(plan).map(({ pit, finds }): NotesBlock => {
    const name = pit.id.replace(/^P/, '');
    const fills = pit.fills.map(({ context, description }) => say(words.fillLine, { context, description }));
    return {
      block: 'pit',
      pit,
      finds,
      planCaption: say(words.planCaption, { pit: name }),
      sectionCaption: `${say(words.sectionCaption, { pit: name })} ${fills.join('; ')}.`,
    };
  });
  const date = say(words.notesDate, {
    label: site.periodLabel,
    from: site.periodFromBce,
    to: site.periodToBce,
    status: statusWords(site.periodStatus),
    note: site.periodNote,
  });
  return { id: 'site', title: words.notesStoryTitle, blocks: [text(site.story), quiet(date), ...pits] };
}

/** What the scores of the lesson say, and the works the notes rest on. */
export const lastSections = (plan: Plan, cited: Cited): readonly NotesSection[] => {
  const lines = cited.lines();
  return [
    { id: 'score', title: words.notesScoreTitle, blocks: scoreNotes(plan.activities).map(text) },
    {
      id: 'sources',
      title: notes.sourcesTitle,
      blocks: [
        ...(lines.length === 0 ? [] : [{ block: 'list', items: lines, isOrdered: true } as const]),
        quiet(notes.sourcesMarks),
      ],
    },
  ];
};
