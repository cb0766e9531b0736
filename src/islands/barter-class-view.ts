import type { ClassActivity } from '../../shared/activities/scorers.ts';
import type { Template } from '../../shared/words/index.ts';
import type { barterClass } from '../../shared/words/en/barter-class.ts';

/** The words of a gathering of a class, resolved for a band. */
export type ClassWords = Readonly<Record<keyof typeof barterClass, Template>>;

export interface ClassProps {
  readonly lesson: string;
  readonly activity: ClassActivity;
  readonly words: ClassWords;
  /** Older bands see how the score is worked out. */
  readonly showsWorking: boolean;
}
