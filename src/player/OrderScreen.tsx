import { Order } from '../islands/Order.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';
import { DrawnHere } from './DrawnHere.tsx';

/** An order in a pack: `OrderOnScreen.astro`. */
export function OrderScreen({ question, props, of }: Screens['order'] & Around) {
  return (
    <>
      <div class="order-of">
        <Question question={question} />
        {of !== null && (
          <p class="order-find small quiet">
            <DrawnHere {...of.drawn} />
            <span>
              {of.text}{' '}
              <span class="numbers">
                <span class="triangle">△</span> {of.number}
              </span>
            </span>
          </p>
        )}
      </div>
      <Order {...props} />
    </>
  );
}
