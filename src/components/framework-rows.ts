import type { Plan } from '../../shared/compile/index.ts';
import { youngestAge, type Library } from '../../shared/library/index.ts';
import { CLASS_SIZES, frameworksHeld, lessonSafety } from '../../shared/telling/lesson-safety.ts';
import { catalogues, frameworkName, say } from '../../shared/words/index.ts';

const words = catalogues.en.safetyPapers;

/** Adults by one starting point, for each of `CLASS_SIZES`. */
export interface FrameworkRow {
  readonly name: string;
  readonly isStrictest: boolean;
  readonly adults: readonly number[];
  readonly standing: string;
  readonly mark: string;
}

/** Adults by every starting point we hold for the youngest of a lesson; what none of the rest says, in a sentence. */
export function frameworkRows(
  plan: Plan,
  library: Library,
): { readonly rows: readonly FrameworkRow[]; readonly silent: string | null } {
  const age = youngestAge(plan.bands);
  const held = frameworksHeld(library.safety).map((framework) => ({
    framework,
    ratio: library.safety.ratios.find(
      ({ ageFrom, ageTo, ...row }) => row.framework === framework && age >= ageFrom && age <= ageTo,
    ),
  }));
  const least = Math.min(...held.flatMap(({ ratio }) => ratio?.childrenPerAdult ?? []));
  const silent = held.filter(({ ratio }) => ratio === undefined);
  return {
    rows: held.flatMap(({ framework, ratio }): readonly FrameworkRow[] =>
      ratio === undefined
        ? []
        : [
            {
              name: frameworkName(framework),
              isStrictest: ratio.childrenPerAdult === least,
              adults: CLASS_SIZES.map(
                (pupils) => lessonSafety(plan, library, pupils, [framework]).adults.totalAdults,
              ),
              standing: say(words.frameworkLine, {
                ratio: ratio.childrenPerAdult ?? 0,
                published: ratio.published,
                standing: ratio.standing,
              }),
              mark: `(${ratio.status}: ${ratio.source})`,
            },
          ],
    ),
    silent:
      silent.length === 0
        ? null
        : say(words.frameworksSilent, {
            age,
            names: silent.map(({ framework }) => frameworkName(framework)).join('; '),
          }),
  };
}
