import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { packWords } from '../../shared/words/en/pack.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { cautionWords } from '../../shared/telling/caution-words.ts';
import { lessonParticulars } from '../../shared/telling/lesson-particulars.ts';
import { rodParts } from '../components/rod-parts.ts';
import type { LessonView } from '../player/lesson-view.ts';
import { packSafety } from './pack-safety.ts';
import { newDrawings } from './drawings.ts';
import { lessonPapers } from './papers/lesson-papers.ts';
import { screenView } from './screen-view.ts';

/**
 * A lesson as the player shows it: words said, drawings drawn once, props made as the pages of the site make them.
 *
 * @param lesson What the device keeps answers under; different for lessons that differ.
 */
export function lessonView(lesson: string, plan: Plan, library: Library): LessonView {
  const { site } = catalogues.en;
  const drawings = newDrawings();
  const made = plan.activities.map((activity, index) => {
    const {
      view,
      question,
      drawings: shown,
    } = screenView(activity, { lesson, plan, library, around: drawings });
    drawings.keep(shown);
    return {
      id: activity.id,
      number: index + 1,
      title: activity.title,
      minutes: say(site.minutesLong, { minutes: activity.minutes }),
      question: question === activity.title ? null : question,
      view,
    };
  });
  const papers = lessonPapers(plan, library, drawings);
  const isInvented = plan.site.status === 'invented';
  return {
    product: site.productName,
    skip: site.skipToContent,
    foot: isInvented ? `${packWords.invented(plan.site.name)} ${packWords.foot}` : packWords.foot,
    rod: { label: site.rodLabel, parts: rodParts(plan) },
    title: plan.title,
    site: plan.site.name,
    invented: isInvented ? site.invented : null,
    particulars: lessonParticulars(plan),
    drawings: drawings.all(),
    parts: plan.parts.flatMap((part, index): LessonView['parts'] => {
      if (part.part === 'prose') return [{ part: 'prose', id: `part-${index + 1}`, html: part.html }];
      const found = made.find(({ id }) => id === part.activity);
      return found === undefined ? [] : [{ part: 'activity', activity: found }];
    }),
    caution: cautionWords(library.safety, plan),
    safety: packSafety(plan, library),
    papers,
    results: {
      title: packWords.resultsTitle,
      lead: packWords.resultsLead,
      save: packWords.resultsSave,
      none: packWords.resultsNone,
      saved: packWords.resultsSaved,
      file: `${lesson}-answers.json`,
    },
  };
}
