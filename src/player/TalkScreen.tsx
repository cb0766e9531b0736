import { Talk } from '../islands/Talk.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';

/** A talk in a pack: `TalkOnScreen.astro`. */
export function TalkScreen({ question, props }: Screens['talk'] & Around) {
  return (
    <>
      <Question question={question} />
      <Talk {...props} />
    </>
  );
}
