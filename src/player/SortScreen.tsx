import { Sort } from '../islands/Sort.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';

/** A sort in a pack: `SortOnScreen.astro`. */
export function SortScreen({ question, props }: Screens['sort'] & Around) {
  return (
    <>
      <Question question={question} />
      <Sort {...props} />
    </>
  );
}
