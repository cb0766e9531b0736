import type { Plan } from '../../shared/compile/index.ts';
import { catalogues, say } from '../../shared/words/index.ts';

/** What stands in the title block of a lesson: where, for whom, how long. */
export function lessonParticulars(plan: Plan): readonly { readonly name: string; readonly value: string }[] {
  const words = catalogues.en.site;
  const pits = [...new Set(plan.activities.flatMap(({ finds }) => finds.map(({ pit }) => pit)))].toSorted();
  return [
    { name: words.titleSite, value: plan.site.code },
    { name: words.titlePit, value: pits.map((pit) => pit.replace(/^P/, '')).join(', ') },
    { name: words.titleFor, value: catalogues.en.agesOf(plan.bands) },
    { name: words.titleTime, value: say(words.minutesLong, { minutes: plan.minutes }) },
  ];
}
