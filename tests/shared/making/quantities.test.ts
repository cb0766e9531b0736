import { describe, expect, test } from 'vitest';
import { stream, uniform } from '../../../shared/chance/index.ts';
import { standardNormalQuantile } from '../../../shared/estimating/index.ts';
import { isQuantityId, makeAxe, quantityIds, resolveHead, weakest } from '../../../shared/making/index.ts';
import { processorMs } from '../../processor-ms.ts';
import { figures, head, make, off, reckon, small } from '../../reference/making/model.ts';

test('the quantities a lesson can ask for are there, by name', () => {
  const asked = [
    'axe-mass',
    'knapping-minutes',
    'grinding-hours',
    'hafting-hours',
    'axe-hours',
    'felling-minutes',
    'house-stakes-hours',
    'axes-in-a-nodule',
    'waste-share',
  ];
  expect(quantityIds).toEqual(expect.arrayContaining(asked));
  expect(quantityIds).toEqual(quantityIds.toSorted());
  expect(isQuantityId('axe-hours')).toBe(true);
  expect(isQuantityId('toString')).toBe(false);
});

test('a nodule of 10 kg holds 7 small axes, 2.7 to 12.4 by hand: (245.3 + 41.3) g of blank, a fifth kept', () => {
  const axes = reckon('axes-in-a-nodule', { ...small, noduleKg: 10 });
  // 10,000 × 0.2 / 286.6; low: ln(0.2/0.08) with ln(0.62/0.56): 6.98 e^−0.922; high: ln(0.35/0.2) with ln(0.56/0.47): 6.98 e^0.586.
  expect(off(axes.middle, 6.98)).toBeLessThan(0.01);
  expect(off(axes.low, 2.776)).toBeLessThan(0.01);
  expect(off(axes.high, 12.54)).toBeLessThan(0.01);
  expect(axes.without).toEqual(['blanks that break']);
});

test('stakes: one maker fells them all, so a hundred take a hundred times as long at every end', () => {
  const one = reckon('felling-minutes', { diameterCm: 8, wood: 'hazel' });
  const house = reckon('house-stakes-hours', { diameterCm: 8, wood: 'hazel', stakes: 100 });
  // By hand: 0.015 × √10 × 0.8 × 64 min = 2.43 min each; 100 take 4.05 h.
  expect(off(house.middle, 4.05)).toBeLessThan(0.01);
  expect(house.high / house.middle).toBeCloseTo(one.high / one.middle, 9);
});

test('the breakage of the experienced is 1 in 5, from 1 in 9 to 1 in 3 by odds halved and doubled', () => {
  const risk = reckon('breakage-risk', { skill: 'experienced' });
  expect(risk.middle).toBeCloseTo(0.2, 9);
  expect(risk.low).toBeCloseTo(1 / 9, 6);
  expect(risk.high).toBeCloseTo(1 / 3, 6);
});

test('waste, haft, sharpening and steel come with the ends their figures give', () => {
  expect(reckon('waste-share', {})).toMatchObject({ status: 'ASM', unit: 'share' });
  expect(reckon('waste-share', {}).low).toBeCloseTo(0.65, 6);
  expect(reckon('waste-share', {}).high).toBeCloseTo(0.92, 6);
  // By hand: 20 e^(1.645 × 0.6).
  expect(off(reckon('sharpening-minutes', {}).high, 53.7)).toBeLessThan(0.01);
  // By hand: 26.8 / 4 min; spread √(0.6² + 0.45²) = 0.75.
  const steel = reckon('felling-minutes-steel', { diameterCm: 20 });
  expect(off(steel.middle, 6.71)).toBeLessThan(0.01);
  expect(off(steel.high / steel.middle, 3.434)).toBeLessThan(0.01);
  // By hand: (245.3 + 41.3) / 0.2 g.
  expect(off(reckon('nodule-mass', small).middle, 1.433)).toBeLessThan(0.01);
});

test('mined flint adds its hours, three people at the grinder theirs', () => {
  const found = reckon('axe-hours', small);
  const mined = reckon('axe-hours', { ...small, mined: true });
  // By hand: 1.2 h/kg × 1.433 kg × e^(0.49/2) = 2.197 h on average.
  expect(mined.mean - found.mean).toBeCloseTo(2.197, 2);
  const pulled = make({ ...small, grinder: 'weighted-pull' });
  const weighted = reckon('head-hours', { ...small, grinder: 'weighted-pull' });
  expect(weighted.middle).toBeGreaterThan(pulled.grindingHours.middle * 2.9);
});

describe('how we know', () => {
  test('a result names every figure it stands on, each once, and claims no more than the least sure', () => {
    const made = make(small);
    const ids = made.grindingHours.used.map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining(
        ['grind-rate', 'session-factor', 'taper-factor', 'spread-grind', 'flint/density'].slice(0, 4),
      ),
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(made.grindingHours.status).toBe('ASM');
    expect(made.massGrams.status).toBe('FM');
    expect(made.massGrams.sources).toEqual(['forum2014', 'pas-soham', 'own-judgement', 'rock-handbook']);
    expect(made.totalHours.used.map(({ id }) => id)).toEqual(expect.arrayContaining(ids));
  });

  test('the least sure mark wins; of none it is DER', () => {
    expect(weakest(['RF', 'CP', 'DER'])).toBe('CP');
    expect(weakest(['RF'])).toBe('RF');
    expect(weakest([])).toBe('DER');
    expect(make({ stone: 'jadeitite' }).knappingMinutes).toMatchObject({
      low: 0,
      high: 0,
      status: 'DER',
      used: [],
    });
  });
});

/** One normal score of a seeded stream. */
const normal = (chance: { next: () => number }): number =>
  standardNormalQuantile((uniform(chance) * 0xffffffff + 0.5) / 0x100000000);

test.each([
  { name: 'a small flint axe', request: small },
  {
    name: 'a large basalt axe, mirror finish',
    request: {
      form: 'pecked-celt',
      stone: 'basalt',
      lengthMm: 280,
      widthMm: 90,
      thicknessMm: 60,
      finish: 'mirror',
    },
  },
  {
    name: 'a four-sided axe by a learner, mined',
    request: { form: 'thin-butted', skill: 'learner', mined: true },
  },
  { name: 'an edge-ground axe', request: { form: 'long-oval', extent: 'edge', finish: 'ground' } },
])('$name: the whole agrees with 200,000 seeded draws within 3 per cent', ({ name, request }) => {
  const axe = head(request);
  const made = makeAxe(figures, axe);
  const spread = (id: keyof typeof figures.spreads): number => figures.spreads[id].middle;
  const parts = [
    [figures.coefficients['find-hours'].middle, spread('spread-find')],
    [figures.coefficients['test-minutes'].middle / 60, spread('spread-test')],
    [made.knappingMinutesWithFailures.middle / 60, spread('spread-knap')],
    [made.peckingHours.middle, spread('spread-peck')],
    [made.grindingHours.middle * axe.grinder.people, spread('spread-grind')],
    [made.haftingHours.middle, spread('spread-haft')],
    [
      axe.mined ? figures.coefficients['mine-labour'].middle * reckon('nodule-mass', request).middle : 0,
      spread('spread-mine'),
    ],
  ] as const;
  const chance = stream(name);
  const sums = Float64Array.from({ length: 200_000 }, () =>
    parts.reduce(
      (sum, [middle, sigma]) => (middle === 0 ? sum : sum + middle * Math.exp(sigma * normal(chance))),
      0,
    ),
  ).sort();
  const drawn = (share: number): number => sums[Math.floor(share * sums.length)] ?? Number.NaN;
  expect(off(made.totalHours.low, drawn(0.05))).toBeLessThan(0.03);
  expect(off(made.totalHours.lowerQuarter, drawn(0.25))).toBeLessThan(0.03);
  expect(off(made.totalHours.middle, drawn(0.5))).toBeLessThan(0.03);
  expect(off(made.totalHours.upperQuarter, drawn(0.75))).toBeLessThan(0.03);
  expect(off(made.totalHours.high, drawn(0.95))).toBeLessThan(0.03);
});

test('a product of factors known by their ends agrees with draws of split log-normals within 5 per cent', () => {
  const axes = reckon('axes-in-a-nodule', { ...small, noduleKg: 10 });
  const chance = stream('nodules');
  const split = (low: number, middle: number, high: number): number => {
    const z = normal(chance);
    return middle * Math.exp((z * Math.log(z < 0 ? middle / low : high / middle)) / 1.6449);
  };
  const draws = Float64Array.from(
    { length: 200_000 },
    () => 6.98 * (split(0.08, 0.2, 0.35) / 0.2) * split(1 / 0.62, 1 / 0.56, 1 / 0.47) * 0.56,
  ).sort();
  const drawn = (share: number): number => draws[Math.floor(share * draws.length)] ?? Number.NaN;
  expect(off(axes.low, drawn(0.05))).toBeLessThan(0.05);
  expect(off(axes.middle, drawn(0.5))).toBeLessThan(0.05);
  expect(off(axes.high, drawn(0.95))).toBeLessThan(0.05);
});

test('one axe is reckoned in under 2 ms, ten times over', () => {
  const resolved = resolveHead(figures, small);
  if (!resolved.ok) throw new Error('refused');
  makeAxe(figures, resolved.value);
  const { value } = resolved;
  const milliseconds = processorMs(() => {
    for (let run = 0; run < 50; run += 1) makeAxe(figures, value);
  });
  expect(milliseconds / 50).toBeLessThan(2);
});
