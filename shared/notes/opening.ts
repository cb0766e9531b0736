import { isScored, sheetsOf } from '../activities/index.ts';
import { handlingTables, type Plan } from '../compile/index.ts';
import type { Library } from '../library/index.ts';
import { stationRule } from '../safety/index.ts';
import { CLASS_SIZES, lessonSafety } from '../telling/lesson-safety.ts';
import { notesLine } from '../telling/notes-line.ts';
import { becauseSentence } from '../words/en/safety.ts';
import { catalogues, say } from '../words/index.ts';
import { heading, list, quiet, text, type NotesBlock, type NotesSection } from './blocks.ts';
import type { ChosenRows } from './choose-rows.ts';

const { site, notes: words } = catalogues.en;

/** The job in three lines: what it is, what pupils do, what they end with. */
export const jobSection = (plan: Plan): NotesSection => ({
  id: 'job',
  title: site.notesInThreeLines,
  blocks: [
    {
      block: 'list',
      isOrdered: true,
      items: [
        plan.about ?? plan.title,
        plan.activities.map((activity) => notesLine(activity)).join(' '),
        [
          ...(plan.readAloud === true ? [site.notesAloud] : []),
          plan.activities.some(isScored) ? site.notesRecord : words.jobOpen,
          site.notesFirst,
        ].join(' '),
      ],
    },
  ],
});

function stationBlocks(plan: Plan, { safety }: Library): readonly NotesBlock[] {
  const stations = [...(plan.visit?.stations ?? []), ...handlingTables(plan)];
  if (stations.length === 0) return [];
  const lines = stations.map((station) => {
    const { name, practitioners } = stationRule(safety, station.kind);
    return say(words.station, {
      name,
      children: station.childrenAtOnce,
      practitioners:
        practitioners === 0 ? words.noPractitioner : say(words.practitioners, { count: practitioners }),
    });
  });
  return [heading(words.stationsTitle), list(lines)];
}

/** What to bring, and the least number of adults for classes of usual sizes. */
export function kitSection(plan: Plan, library: Library, kit: ChosenRows['kit']): NotesSection {
  const hasCards = plan.activities.flatMap(sheetsOf).some(({ part }) => part.endsWith('cards'));
  const papers = [...(hasCards ? [site.cards] : []), site.pupilSheet, site.answers]
    .map((name) => name.toLowerCase())
    .join(', ');
  const least = CLASS_SIZES.map((pupils) => {
    const { adults } = lessonSafety(plan, library, pupils);
    const decided = adults.because.filter(({ rule }) => rule === 'decided').map(becauseSentence);
    return say(words.whoLine, { pupils, count: adults.totalAdults, because: decided.join(' ') });
  });
  return {
    id: 'kit',
    title: words.kitTitle,
    blocks: [
      list([say(words.papersToPrint, { papers }), ...kit.map((row) => row.text)]),
      heading(words.whoTitle),
      list(least),
      quiet(words.whoNote),
      ...stationBlocks(plan, library),
    ],
  };
}

/** What the safety rules say of the lesson, and where the rest of it is. */
export function safetySection(plan: Plan, library: Library): NotesSection {
  const { hazards } = lessonSafety(plan, library, CLASS_SIZES[0]);
  const names = hazards.map(({ name }) => name.charAt(0).toLowerCase() + name.slice(1));
  const { caution } = library.safety;
  return {
    id: 'safety',
    title: words.safetyTitle,
    blocks: [
      text(caution.short),
      text(names.length === 0 ? words.safetyNone : say(words.safetyHazards, { hazards: names.join('; ') })),
      quiet(words.safetySee),
    ],
  };
}
