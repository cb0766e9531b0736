import { Barter } from '../islands/Barter.tsx';
import { BarterClass } from '../islands/BarterClass.tsx';
import { BarterTalk } from './BarterTalk.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';

/** A gathering in a pack: `BarterOnScreen.astro`. */
export function GatheringScreen({ question, props, talk }: Screens['gathering'] & Around) {
  return (
    <>
      <Question question={question} />
      <Barter {...props} />
      <BarterTalk {...talk} />
    </>
  );
}

/** A gathering of a whole class in a pack. */
export function ClassScreen({ question, props, talk }: Screens['class'] & Around) {
  return (
    <>
      <Question question={question} />
      <BarterClass {...props} />
      <BarterTalk {...talk} />
    </>
  );
}
