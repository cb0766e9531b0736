import { CompareChance } from '../islands/CompareChance.tsx';
import { ComparePlaces } from '../islands/ComparePlaces.tsx';
import { CompareTally } from './CompareTally.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';
import { Shown } from './Shown.tsx';

/** What lies in which pit, in a pack: `CompareOnScreen.astro`. */
export function PlacesScreen({ question, props, plans, tally }: Screens['places'] & Around) {
  return (
    <>
      <Question question={question} />
      <div class="compare-plans">
        {plans.map(({ picture, caption }) => (
          <figure key={caption} class="compare-plan">
            <Shown className="ink" {...picture} />
            <figcaption>{caption}</figcaption>
          </figure>
        ))}
      </div>
      <CompareTally {...tally} />
      <ComparePlaces {...props} />
    </>
  );
}

/** How alike pits are, and whether chance would do it, in a pack. */
export function ChanceScreen({ question, props, tally }: Screens['chance'] & Around) {
  return (
    <>
      <Question question={question} />
      <CompareTally {...tally} />
      <CompareChance {...props} />
    </>
  );
}
