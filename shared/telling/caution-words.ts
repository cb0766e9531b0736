import { handlingTables, standingHazards, workNamed, type Plan } from '../compile/index.ts';
import { youngest } from '../library/index.ts';
import type { SafetyRules } from '../safety/index.ts';
import { catalogues, say, wordsFor } from '../words/index.ts';

/** Who reads the caution, and where. */
export interface CautionPlace {
  readonly isForTeacher?: boolean;
  /** Papers carry the line of what children never do, whatever they show. */
  readonly isPaper?: boolean;
}

/** The caution that stands with a lesson; null where nothing in it brings one. */
export function cautionWords(
  safety: SafetyRules,
  plan: Plan,
  { isForTeacher = false, isPaper = false }: CautionPlace = {},
): { readonly title: string; readonly text: string } | null {
  if (standingHazards(safety, plan).length === 0) return null;
  const words = wordsFor(catalogues.en.site, youngest(plan.bands));
  // Where pieces are met, a pupil is not told that these are only drawings.
  const hasTable = handlingTables(plan).length > 0;
  const { works } = workNamed(plan);
  const making =
    works.includes('knapping-demo') || works.includes('wet-grinding-demo')
      ? say(isForTeacher ? words.makingTeacher : words.makingText)
      : '';
  const fire = works.includes('pitch-fire-demo')
    ? (safety.refusals.find(({ id }) => id === 'X15')?.say ?? '')
    : '';
  const sentences = [
    say(isForTeacher ? words.sharpTeacher : hasTable ? safety.caution.forPupils : words.sharpText),
    making,
    fire,
    isPaper ? safety.caution.neverLine : '',
  ];
  return { title: say(words.sharpTitle), text: sentences.filter((sentence) => sentence !== '').join(' ') };
}
