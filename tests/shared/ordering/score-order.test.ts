import { array, assert, integer, nat, property, tuple } from 'fast-check';
import { expect, test } from 'vitest';
import { derive, shuffle, stream, uniform } from '../../../shared/chance/index.ts';
import { guessOrder, orderedPairs, sampleOrder, scoreOrder } from '../../../shared/ordering/index.ts';
import { allOrders, axeSteps, numbered, ordered } from './steps.ts';

const axe = ordered(axeSteps);
const steps = axe.ids;

test('every valid order scores 1, and its mirror -1', () => {
  for (let turn = 0; turn < 50; turn += 1) {
    const order = sampleOrder(axe, stream(`valid ${turn}`));
    expect(scoreOrder(axe, order)).toMatchObject({ score: 1, broken: 0, toMove: [], firstBroken: null });
    expect(scoreOrder(axe, order.toReversed()).score).toBe(-1);
  }
});

test('laying by chance scores 0 on average, within 0.02', () => {
  const chance = stream('laid by chance');
  let total = 0;
  for (let turn = 0; turn < 5000; turn += 1) total += scoreOrder(axe, guessOrder(axe, chance)).score ?? 1;
  expect(Math.abs(total / 5000)).toBeLessThan(0.02);
});

test('over all orders of a small making the mean is 0 to the last digit', () => {
  const small = ordered(numbered(5, [[0, 2], [1, 2], [1, 3]])); // prettier-ignore
  const scores = allOrders(small.ids).map((order) => scoreOrder(small, order));
  expect(scores.reduce((total, { kept, broken }) => total + kept - broken, 0)).toBe(0);
});

test.each([
  { name: 'nothing laid', laid: [] },
  { name: 'every card at one place', laid: [steps] },
  { name: 'only cards that are no step', laid: ['moon', 'cheese'] },
])('$name is worth what guessing is worth', ({ laid }) => {
  expect(scoreOrder(axe, laid)).toMatchObject({ score: 0, kept: 0, broken: 0, open: 22 });
});

test('two cards at one place leave their pair open and keep the rest', () => {
  const laid = [
    'find-nodule',
    'rough-out',
    ['grind', 'polish'],
    'cut-haft-wood',
    'cut-socket',
    'fit',
    'bind',
  ];
  expect(scoreOrder(axe, laid)).toMatchObject({
    kept: 21,
    broken: 0,
    open: 1,
    firstBroken: { before: 'grind', after: 'polish' },
  });
});

test('two cards at one place that have an order are one card to move', () => {
  expect(scoreOrder(ordered(numbered(2, [[0, 1]])), [['0', '1']]).toMove).toHaveLength(1); // prettier-ignore
});

test('free cards at one place cost nothing', () => {
  const laid = [
    ['find-nodule', 'cut-haft-wood'],
    'rough-out',
    ['grind', 'cut-socket'],
    'polish',
    'fit',
    'bind',
  ];
  expect(scoreOrder(axe, laid).score).toBe(1);
});

test('a card laid twice counts once, where it lay first', () => {
  expect(scoreOrder(axe, [...steps, 'bind', 'find-nodule'])).toMatchObject({
    score: 1,
    strays: ['bind', 'find-nodule'],
  });
});

test('a card left out is named and its pairs stay open', () => {
  const score = scoreOrder(
    axe,
    steps.filter((id) => id !== 'rough-out'),
  );
  expect(score).toMatchObject({ left: ['rough-out'], broken: 0, open: 6, score: 16 / 22 });
});

test('the drawn arrow that is broken first in the line is spoken of first', () => {
  const laid = ['polish', 'find-nodule', 'grind', 'rough-out', 'cut-haft-wood', 'cut-socket', 'bind', 'fit'];
  // polish lies before its rough-out too, but no arrow joins them.
  expect(scoreOrder(axe, laid).firstBroken).toEqual({ before: 'grind', after: 'polish', isDrawn: true });
});

test('an implied pair is spoken of where the step between was left out', () => {
  expect(scoreOrder(axe, ['polish', 'rough-out']).firstBroken).toEqual({
    before: 'rough-out',
    after: 'polish',
    isDrawn: false,
  });
});

test('one card carried to the front breaks many pairs and is one card to move', () => {
  const score = scoreOrder(axe, ['bind', ...steps.filter((id) => id !== 'bind')]);
  expect(score.broken).toBe(7);
  expect(score.toMove).toEqual(['bind']);
});

test('the fewest cards to move is what trying every set of cards finds, and moving those mends the line', () => {
  const arrow = tuple(nat(5), nat(5)).filter(([a, b]) => a < b);
  assert(
    property(array(arrow, { maxLength: 9 }), integer(), (arrows, seed) => {
      const precedence = ordered(numbered(6, arrows));
      const order = shuffle(stream(String(seed)), precedence.ids);
      const pairs = orderedPairs(precedence);
      const isClean = (kept: readonly string[]): boolean =>
        pairs.every(([a, b]) => {
          const [early, late] = [kept.indexOf(String(a)), kept.indexOf(String(b))];
          return early < 0 || late < 0 || early < late;
        });
      const sets = Array.from({ length: 64 }, (_, bits) =>
        order.filter((_card, place) => ((bits >> place) & 1) === 1),
      );
      const most = Math.max(...sets.filter(isClean).map((kept) => kept.length));
      const { toMove } = scoreOrder(precedence, order);
      expect(toMove).toHaveLength(6 - most);
      expect(isClean(order.filter((id) => !toMove.includes(id)))).toBe(true);
    }),
    { numRuns: 300 },
  );
});

test('better judgement of pairs scores higher', () => {
  // A pupil who starts from a right order and lets slips in: each pass swaps neighbours with the given chance.
  const mean = (slips: number): number => {
    const chance = derive(stream('skill'), String(slips));
    let total = 0;
    for (let pupil = 0; pupil < 400; pupil += 1) {
      const line = [...sampleOrder(axe, chance)];
      for (let slip = 0; slip < 40; slip += 1) {
        if (uniform(chance) >= slips) continue;
        const place = Math.floor(uniform(chance) * (line.length - 1));
        const [one, other] = [line[place], line[place + 1]];
        if (one !== undefined && other !== undefined) [line[place], line[place + 1]] = [other, one];
      }
      total += scoreOrder(axe, line).score ?? -2;
    }
    return total / 400;
  };
  const means = [0, 0.05, 0.15, 0.4, 1].map(mean);
  expect(means[0]).toBe(1);
  for (const [index, value] of means.slice(1).entries())
    expect(value).toBeLessThan((means[index] ?? 0) - 0.02);
});
