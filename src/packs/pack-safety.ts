import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { inOrder } from '../../shared/safety/index.ts';
import { lessonSafety } from '../../shared/telling/lesson-safety.ts';
import { packWords } from '../../shared/words/en/pack.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import type { LessonView } from '../player/lesson-view.ts';

/** Hazards do not hang on how many come: any class will do. */
const A_CLASS = 30;

/** The lesson's hazards for a pack, each with what is usually done. */
export function packSafety(plan: Plan, library: Library): LessonView['safety'] {
  const { hazards } = lessonSafety(plan, library, A_CLASS);
  const words = catalogues.en.safetyPapers;
  return {
    title: packWords.safetyTitle,
    first: words.first,
    hazards: hazards.map(({ name, controls, deferTo }) => ({
      name,
      controls: inOrder(controls).map(({ text }) => text),
      decides: say(words.decides, { who: deferTo }),
    })),
  };
}
