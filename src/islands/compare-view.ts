import type { CompareActivity } from '../../shared/activities/scorers.ts';
import type { CompareWords } from '../../shared/telling/compare-words.ts';

export interface CompareProps {
  readonly lesson: string;
  readonly activity: CompareActivity;
  readonly words: CompareWords;
  /** Older bands see how the score is worked out. */
  readonly showsWorking: boolean;
}
