import { expect, test } from 'vitest';
import { countOrders, orderedPairs, restrictSteps } from '../../shared/ordering/index.ts';
import { ordered } from '../shared/ordering/steps.ts';

// The steps of a ground axe: what each must follow, and what a maker would usually do before it (CP).
const steps: readonly (readonly [id: string, must: readonly string[], usually: readonly string[]])[] = [
  ['find-nodule', [], []],
  ['test-nodule', ['find-nodule'], []],
  ['rough-out', ['find-nodule'], ['test-nodule']],
  ['thin', ['rough-out'], []],
  ['trim', ['rough-out'], ['thin']],
  ['fetch-grindstone', [], []],
  ['grind', ['rough-out', 'fetch-grindstone'], ['thin', 'trim']],
  ['polish', ['grind'], []],
  ['cut-haft-wood', [], []],
  ['shape-haft', ['cut-haft-wood'], []],
  ['cut-socket', ['cut-haft-wood', 'rough-out'], ['shape-haft', 'trim']],
  ['make-binding', [], []],
  ['fit', ['cut-socket'], ['grind', 'polish']],
  ['bind', ['fit', 'make-binding'], []],
  ['use', ['fit'], ['bind']],
  ['resharpen', ['use'], []],
];
const hard = ordered(steps.map(([id, mustFollow]) => ({ id, mustFollow })));
const trade = ordered(steps.map(([id, must, usually]) => ({ id, mustFollow: [...must, ...usually] })));

const all = steps.map(([id]) => id);
const blade = ['find-nodule', 'test-nodule', 'rough-out', 'thin', 'trim', 'grind', 'polish'];
const short = [...blade, 'cut-haft-wood', 'shape-haft', 'cut-socket', 'fit', 'bind', 'use', 'resharpen'];
const eight = ['find-nodule', 'rough-out', 'grind', 'polish', 'cut-haft-wood', 'cut-socket', 'fit', 'bind'];

// Pairs in the closed relation and orders that break none, counted over subsets by another program (DER).
test.each([
  { name: 'all sixteen', ids: all, order: 'trade', pairs: 84, orders: 8775n },
  { name: 'all sixteen', ids: all, order: 'hard', pairs: 38, orders: 181947600n },
  { name: 'the short set', ids: short, order: 'trade', pairs: 75, orders: 85n },
  { name: 'the short set', ids: short, order: 'hard', pairs: 35, orders: 2223936n },
  { name: 'the blade alone', ids: blade, order: 'trade', pairs: 21, orders: 1n },
  { name: 'the blade alone', ids: blade, order: 'hard', pairs: 11, orders: 72n },
  { name: 'eight steps', ids: eight, order: 'trade', pairs: 22, orders: 12n },
  { name: 'eight steps', ids: eight, order: 'hard', pairs: 18, orders: 35n },
])(
  'steps of an axe (CP), $name, $order order: $pairs pairs, $orders orders (DER)',
  ({ ids, order, pairs, orders }) => {
    const precedence = ordered(restrictSteps(order === 'trade' ? trade : hard, ids));
    expect(orderedPairs(precedence)).toHaveLength(pairs);
    expect(countOrders(precedence)).toEqual({ count: orders });
  },
);
