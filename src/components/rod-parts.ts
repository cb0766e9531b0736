import type { Plan } from '../../shared/compile/index.ts';
import { catalogues } from '../../shared/words/index.ts';

/** The bands of a lesson's ranging rod: each part in order, named as short as it can be. */
export function rodParts(plan: Plan): readonly {
  readonly id: string;
  readonly name: string;
  readonly href: string;
  readonly isActivity: boolean;
}[] {
  const words = catalogues.en.site;
  return plan.parts.map((part, index) => {
    if (part.part === 'activity') {
      const title = plan.activities.find(({ id }) => id === part.activity)?.title ?? part.activity;
      return { id: part.activity, name: title, href: `#${part.activity}`, isActivity: true };
    }
    const isLast = index === plan.parts.length - 1;
    return {
      id: `part-${index + 1}`,
      name: isLast && index > 0 ? words.rodEnd : words.rodRead,
      href: `#part-${index + 1}`,
      isActivity: false,
    };
  });
}
