import type { Plan } from '../compile/index.ts';
import { wordsUsed, type GlossaryWord } from '../glossary/index.ts';
import type { Library } from '../library/index.ts';
import { lessonTexts, plainText, textsBefore } from './lesson-texts.ts';

/** The words of the trade a lesson uses anywhere, its answers too. */
export const lessonWords = (plan: Plan, { glossary, vocabulary }: Library): readonly GlossaryWord[] =>
  wordsUsed(glossary, lessonTexts(plan, vocabulary));

/** The words a pupil meets before answering: these may stand beside the questions. */
export const wordsBefore = (plan: Plan, { glossary }: Pick<Library, 'glossary'>): readonly GlossaryWord[] =>
  wordsUsed(glossary, [
    ...plan.parts.flatMap((part) => (part.part === 'prose' ? [plainText(part.html)] : [])),
    ...plan.activities.flatMap((activity) => textsBefore(activity)),
  ]);

/**
 * The words first met in each stretch of a lesson: from one piece of prose up to the next. By the place of the part that
 * begins the stretch; a word is told once.
 */
export function wordsByStretch(
  plan: Plan,
  { glossary }: Pick<Library, 'glossary'>,
): ReadonlyMap<number, readonly GlossaryWord[]> {
  const stretches = new Map<number, string[]>();
  let start = 0;
  for (const [index, part] of plan.parts.entries()) {
    if (part.part === 'prose') start = index;
    const texts = stretches.get(start) ?? [];
    const activity =
      part.part === 'activity' ? plan.activities.find(({ id }) => id === part.activity) : undefined;
    texts.push(...(part.part === 'prose' ? [plainText(part.html)] : []));
    if (activity !== undefined) texts.push(...textsBefore(activity));
    stretches.set(start, texts);
  }
  const told = new Set<string>();
  return new Map(
    [...stretches].map(([index, texts]) => {
      const fresh = wordsUsed(glossary, texts).filter(({ word }) => !told.has(word));
      for (const { word } of fresh) told.add(word);
      return [index, fresh] as const;
    }),
  );
}
