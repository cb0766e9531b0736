import { expect, test } from 'vitest';
import { bestGroup, kindsInCompany, siteByChance, type Counts } from '../../../shared/assemblage/index.ts';
import { stream } from '../../../shared/chance/index.ts';
import { wendleMarsh } from '../../reference/wendle-marsh-presence.ts';

const ladder: Counts = {
  pits: ['P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9', 'P10', 'P11', 'P12'],
  kinds: ['jaw', 'pin', 'disc', 'flake', 'none'],
  // jaw in 6 pits, pin in 5 of the same; disc elsewhere; flakes everywhere.
  rows: Array.from({ length: 12 }, (_, pit) => [
    pit < 6 ? 1 : 0,
    pit < 5 ? 1 : 0,
    pit % 3 === 0 ? 1 : 0,
    2,
    0,
  ]),
};

test('the closest company comes first, with its chance alone and its chance among all pairs', () => {
  const { pairs } = kindsInCompany(ladder, 0, stream('1'));
  expect(pairs).toHaveLength(3);
  const [first] = pairs;
  expect(first).toMatchObject({ kinds: ['jaw', 'pin'], together: 5, expected: 2.5 });
  expect(first?.chance).toBeCloseTo(6 / 792, 12);
  expect(first?.holm).toBeCloseTo(18 / 792, 12);
  expect(first?.benjaminiHochberg).toBeCloseTo(18 / 792, 12);
});

test('kinds in every pit, or in none, keep no company', () => {
  const { pairs } = kindsInCompany(ladder, 0, stream('1'));
  expect(pairs.flatMap((pair) => pair.kinds)).not.toContain('flake');
  expect(pairs.flatMap((pair) => pair.kinds)).not.toContain('none');
});

test('in nine pits no pair of kinds can pass a correction for all pairs, and the site-wide question can still be put', () => {
  const { pairs, closest } = kindsInCompany(wendleMarsh, 2000, stream('company'));
  expect(pairs).toHaveLength(210); // 21 kinds: flakes are in every pit
  expect(Math.min(...pairs.map((pair) => pair.holm))).toBe(1);
  // Jaws in five pits, pins in four of those five: 5/126; no pair is closer.
  expect(closest.observed).toBeCloseTo(Math.log10(126 / 5), 9);
  expect(closest.chance).toBeGreaterThan(0.05);
});

test('the site of nine pits falls into pits that share more and less than chance makes them', () => {
  const { chance, draws } = siteByChance(wendleMarsh, 2000, stream('site'));
  expect(draws).toBe(2000);
  expect(chance).toBeLessThan(0.05);
});

test('the best pair, trio or four of pits can be asked for; a site without pits has none', () => {
  expect(bestGroup(wendleMarsh, { size: 2, fewest: 2, most: 5 }, 50, stream('1'))).toMatchObject({
    groups: 36,
    group: { pits: ['3', '5'] },
  });
  expect(bestGroup(wendleMarsh, { size: 4, fewest: 2, most: 5 }, 50, stream('1')).groups).toBe(126);
  const none = bestGroup({ pits: [], kinds: [], rows: [] }, { size: 3, fewest: 2, most: 5 }, 50, stream('1'));
  expect(none).toMatchObject({ group: null, groups: 0, chance: 1 });
});
