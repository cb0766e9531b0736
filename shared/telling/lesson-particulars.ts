import { shownFinds } from '../activities/index.ts';
import type { Plan } from '../compile/index.ts';
import { pitOfFind } from '../library/index.ts';
import { catalogues, say } from '../words/index.ts';

/** What stands in the title block of a lesson: where, for whom, how long. */
export function lessonParticulars(plan: Plan): readonly { readonly name: string; readonly value: string }[] {
  const words = catalogues.en.site;
  const pits = [
    ...new Set(plan.activities.flatMap((activity) => shownFinds(activity).map(({ id }) => pitOfFind(id)))),
  ].toSorted();
  return [
    { name: words.titleSite, value: plan.site.code },
    ...(pits.length === 0
      ? []
      : [{ name: words.titlePit, value: pits.map((pit) => pit.replace(/^P/, '')).join(', ') }]),
    { name: words.titleFor, value: catalogues.en.agesOf(plan.bands) },
    { name: words.titleTime, value: say(words.minutesLong, { minutes: plan.minutes }) },
  ];
}
