import type { Sheet } from '../kind.ts';
import type { OrderActivity } from './activity.ts';

/** An order on paper: cards to cut out, a line to glue them on, the answers with what may change places. */
export function paperOrder(activity: OrderActivity): readonly Sheet[] {
  const { title, question, steps, recorded, validOrders, free, source } = activity;
  const nameOf = (id: string): string => steps.find((step) => step.id === id)?.name ?? id;
  const namesOf = (ids: readonly string[]): readonly string[] => ids.map(nameOf);
  return [
    {
      part: 'step-cards',
      title,
      cards: steps.map(({ letter, name, drawing }) => ({ letter, name, drawing })),
    },
    {
      part: 'step-line',
      title,
      question,
      places: steps.length,
      isDrawn: steps.some(({ drawing }) => drawing !== null),
    },
    {
      part: 'step-answers',
      title,
      validOrders,
      source,
      rows: recorded.flatMap((id) =>
        steps
          .filter((step) => step.id === id)
          .map(({ letter, name, drawing, mustFollow, why, earliest, latest }) => ({
            letter,
            name,
            drawing,
            earliest,
            latest,
            after: namesOf(mustFollow),
            because: why,
          })),
      ),
      free: free.map(({ step, others, bothAfter, bothBefore }) => ({
        step: nameOf(step),
        others: namesOf(others),
        bothAfter: namesOf(bothAfter),
        bothBefore: namesOf(bothBefore),
      })),
    },
  ];
}
