import { starters } from '../../words/en/starters.ts';

/** An order to begin from: three steps to be named. */
export const startOrder = (): Readonly<Record<string, unknown>> => ({
  title: starters.orderTitle,
  steps: [
    { id: 'first', name: starters.orderFirst },
    { id: 'then', name: starters.orderThen, 'must-follow': ['first'], why: starters.orderWhy },
    { id: 'last', name: starters.orderLast, 'must-follow': ['then'], why: starters.orderWhy },
  ],
  minutes: 10,
});
