import type { ClassActivity, ClassDeal } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import type { ClassWords } from './barter-class-view.ts';
import { GoodThing } from './GoodThing.tsx';

interface Props {
  readonly activity: ClassActivity;
  readonly words: ClassWords;
  readonly cards: ClassDeal['cards'];
}

/** The cards as they are printed: what each pupil has, and what they would like. */
export function BarterCards({ activity, words, cards }: Props) {
  const one = (id: string): string => activity.goods.find((good) => good.id === id)?.one ?? id;
  return (
    <>
      <p class="small">{say(words.cardNote)}</p>
      <ul class="cards want-cards">
        {cards.map(({ number, holds, wants }) => (
          <li key={number} class="card want-card">
            <p class="want-number numbers">{number}</p>
            <div>
              <p class="trader-label">{say(words.cardHas)}</p>
              <p class="card-plain">
                <GoodThing good={holds} words={one(holds)} worth={String(wants[holds]?.[0] ?? 0)} />
              </p>
              <p class="trader-label">{say(words.cardWants)}</p>
              <ul class="want-list">
                {Object.entries(wants)
                  .filter(([good]) => good !== holds)
                  .map(([good, worths]) => (
                    <li key={good}>
                      <GoodThing good={good} words={one(good)} worth={String(worths[0] ?? 0)} />
                    </li>
                  ))}
              </ul>
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}
