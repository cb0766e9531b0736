import type { Around } from './lesson-view.ts';

/** What an activity asks, where its title does not. */
export function Question({ question }: Pick<Around, 'question'>) {
  return question === null ? null : <p class="activity-question">{question}</p>;
}
