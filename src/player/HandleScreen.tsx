import { Handle } from '../islands/Handle.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';

/** A handling session in a pack: `HandleOnScreen.astro`. */
export function HandleScreen({ question, props }: Screens['handle'] & Around) {
  return (
    <>
      <Question question={question} />
      <Handle {...props} />
    </>
  );
}
