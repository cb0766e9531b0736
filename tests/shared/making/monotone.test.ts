import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  makeAxe,
  type MakingRequest,
  type QuantityId,
  quantityIds,
  QUANTITIES,
  type Reckoning,
  reckonQuantity,
  resolveHead,
} from '../../../shared/making/index.ts';
import { figures } from '../../reference/making/model.ts';

const ids = (choice: keyof typeof figures.tables): fc.Arbitrary<string> =>
  fc.constantFrom(...figures.tables[choice].map(({ id }) => id));
const within = (measure: keyof typeof figures.limits): fc.Arbitrary<number> => {
  const { from, to } = figures.limits[measure];
  return fc.double({ min: from, max: to, noNaN: true });
};

/** Any axe the model answers for. */
const axes = fc
  .record({
    lengthMm: within('lengthMm'),
    widthMm: within('widthMm'),
    thicknessMm: within('thicknessMm'),
    form: ids('form'),
    stone: ids('stone'),
    grinder: ids('grinder'),
    preform: ids('preform'),
    extent: ids('extent'),
    finish: ids('finish'),
    skill: ids('skill'),
    mined: fc.boolean(),
  })
  .filter((request) => resolveHead(figures, request).ok);

const trees = fc.record({
  diameterCm: within('diameterCm'),
  wood: ids('wood'),
  axe: ids('axe'),
  skill: ids('skill'),
});

const ask = (quantity: QuantityId, request: MakingRequest): Reckoning | null => {
  const result = reckonQuantity(figures, quantity, request);
  return result.ok ? result.value : null;
};

const ends = ['low', 'lowerQuarter', 'middle', 'upperQuarter', 'high', 'mean'] as const;

/** Every end of the second at least that of the first; a rounding error of the last digit is let pass. */
const neverLess = (first: Reckoning | null, second: Reckoning | null): void => {
  for (const end of ends) {
    expect(second?.[end] ?? Number.NaN).toBeGreaterThanOrEqual((first?.[end] ?? Number.NaN) * (1 - 1e-12));
  }
};

const working = [
  'axe-hours',
  'head-hours',
  'grinding-hours',
  'knapping-minutes',
  'knapping-minutes-with-failures',
  'pecking-hours',
  'axe-mass',
  'nodule-mass',
] as const;
const runs = { numRuns: 60 };

describe('the model', () => {
  test.each(['lengthMm', 'widthMm', 'thicknessMm'] as const)('a greater %s never takes less', (size) => {
    fc.assert(
      fc.property(axes, within(size), (axe, other) => {
        const [less, more] = [Math.min(axe[size], other), Math.max(axe[size], other)];
        for (const quantity of working) {
          neverLess(ask(quantity, { ...axe, [size]: less }), ask(quantity, { ...axe, [size]: more }));
        }
      }),
      runs,
    );
  });

  test('a stone that grinds more slowly, shaped the same way, never takes less', () => {
    fc.assert(
      fc.property(axes, ids('stone'), (axe, other) => {
        const table = figures.tables.stone;
        const one = table.find(({ id }) => id === axe.stone);
        const two = table.find(({ id }) => id === other);
        if (one === undefined || two === undefined || one.shapedBy !== two.shapedBy) return;
        const [soft, hard] = one.grindFactor.middle >= two.grindFactor.middle ? [one, two] : [two, one];
        neverLess(
          ask('grinding-hours', { ...axe, stone: soft.id }),
          ask('grinding-hours', { ...axe, stone: hard.id }),
        );
      }),
      runs,
    );
  });

  test('more ground, a finer finish or a coarser blank never takes less', () => {
    fc.assert(
      fc.property(axes, (axe) => {
        const rising = [
          ['extent', ['none', 'edge', 'half', 'full']],
          ['finish', ['ground', 'smooth', 'satin', 'mirror']],
          ['preform', ['fine', 'good', 'coarse']],
        ] as const;
        for (const [choice, order] of rising) {
          order.slice(1).forEach((id, index) => {
            for (const quantity of ['grinding-hours', 'axe-hours', 'head-hours'] as const) {
              neverLess(
                ask(quantity, { ...axe, [choice]: order[index] }),
                ask(quantity, { ...axe, [choice]: id }),
              );
            }
          });
        }
      }),
      runs,
    );
  });

  test('better skill never takes more, at knapping, in the whole or at felling, nor breaks more', () => {
    const better = ['learner', 'competent', 'experienced', 'master'] as const;
    fc.assert(
      fc.property(axes, trees, (axe, tree) => {
        better.slice(1).forEach((skill, index) => {
          const worse = better[index];
          for (const quantity of [
            'knapping-minutes',
            'knapping-minutes-with-failures',
            'axe-hours',
          ] as const) {
            neverLess(ask(quantity, { ...axe, skill }), ask(quantity, { ...axe, skill: worse ?? skill }));
          }
          neverLess(
            ask('felling-minutes', { ...tree, skill }),
            ask('felling-minutes', { ...tree, skill: worse ?? skill }),
          );
          const flint = { ...axe, stone: 'flint', form: 'small-plain' };
          neverLess(
            ask('breakage-risk', { ...flint, skill }),
            ask('breakage-risk', { ...flint, skill: worse ?? skill }),
          );
        });
      }),
      runs,
    );
  });

  test('a thicker tree never takes less, nor more stakes', () => {
    fc.assert(
      fc.property(trees, within('diameterCm'), fc.integer({ min: 1, max: 999 }), (tree, other, stakes) => {
        const less = { ...tree, diameterCm: Math.min(tree.diameterCm, other) };
        const more = { ...tree, diameterCm: Math.max(tree.diameterCm, other) };
        neverLess(ask('felling-minutes', less), ask('felling-minutes', more));
        neverLess(
          ask('house-stakes-hours', { ...less, stakes }),
          ask('house-stakes-hours', { ...more, stakes: stakes + 1 }),
        );
      }),
      runs,
    );
  });

  test('low to high never falls, everything is a number, and every result names its figures and sources', () => {
    fc.assert(
      fc.property(
        axes,
        trees,
        fc.integer({ min: 1, max: 1000 }),
        within('noduleKg'),
        (axe, tree, stakes, noduleKg) => {
          for (const quantity of quantityIds) {
            const reckoned = ask(quantity, { ...tree, ...axe, stakes, noduleKg });
            if (reckoned === null) {
              expect(quantity).toBe('breakage-risk');
              continue;
            }
            const { low, lowerQuarter, middle, upperQuarter, high } = reckoned;
            expect([low, lowerQuarter, middle, upperQuarter, high]).toEqual(
              [low, lowerQuarter, middle, upperQuarter, high].toSorted((a, b) => a - b),
            );
            expect(Number.isFinite(low) && Number.isFinite(high) && low >= 0).toBe(true);
            expect(reckoned.unit).toBe(QUANTITIES[quantity].unit);
            if (middle > 0) {
              expect(reckoned.used.length).toBeGreaterThan(0);
              expect(reckoned.sources.length).toBeGreaterThan(0);
            }
          }
        },
      ),
      runs,
    );
  });

  test('the whole’s high end is less than its parts’ high ends together', () => {
    fc.assert(
      fc.property(axes, (request) => {
        const head = resolveHead(figures, request);
        if (!head.ok) return;
        const made = makeAxe(figures, head.value);
        const people = head.value.grinder.people;
        const parts =
          made.haftingHours.high +
          made.grindingHours.high * people +
          made.knappingMinutesWithFailures.high / 60 +
          made.peckingHours.high;
        const find = 4.4 + 0.12;
        const mined = request.mined ? 1e9 : 0;
        expect(made.totalHours.high).toBeLessThan(parts + find + mined);
      }),
      runs,
    );
  });
});
