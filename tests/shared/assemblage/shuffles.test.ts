import { expect, test } from 'vitest';
import {
  alikeByChance,
  brainerdRobinson,
  companyTail,
  hypergeometric,
  sharedByDeal,
  type Counts,
} from '../../../shared/assemblage/index.ts';
import { sharedBits } from '../../../shared/assemblage/bits.ts';
import { bothMargins } from '../../../shared/assemblage/both-margins.ts';
import { eachTableWithMargins } from '../../../shared/assemblage/tables-with-margins.ts';
import { dealFinds } from '../../../shared/assemblage/deal-finds.ts';
import { dealtLikeness } from '../../../shared/assemblage/dealt-likeness.ts';
import { stream, uniformBelow } from '../../../shared/chance/index.ts';
import { wendleMarsh } from '../../reference/wendle-marsh-presence.ts';
import { dealt, oneHeap, randomPresence } from './tables.ts';

test('every shuffle keeps how many kinds a pit holds and in how many pits a kind lies', () => {
  const { packed, next } = bothMargins(wendleMarsh.rows, stream('margins'));
  const seen = new Set<string>();
  for (let turn = 0; turn < 200; turn += 1) {
    next();
    const rows = wendleMarsh.pits.map((_, pit) =>
      wendleMarsh.kinds.map((_kind, kind) => ((packed.bits[pit] ?? 0) >>> kind) & 1),
    );
    const sums = (table: readonly (readonly number[])[]): number[] =>
      table.map((row) => row.reduce((a, b) => a + b, 0));
    const turned = (table: readonly (readonly number[])[]): number[][] =>
      wendleMarsh.kinds.map((_, kind) => table.map((row) => row[kind] ?? 0));
    expect(sums(rows)).toEqual(sums(wendleMarsh.rows));
    expect(sums(turned(rows))).toEqual(sums(turned(wendleMarsh.rows)));
    seen.add(JSON.stringify(rows));
  }
  expect(seen.size).toBe(200);
});

// Tables of 0 and 1 with all row and column sums alike: OEIS A001499 (two of each) and A000142 (one of each), FM.
test.each([
  {
    name: 'one of each in 4 × 4: 4!',
    rows: [
      [1, 0, 0, 0],
      [0, 1, 0, 0],
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ],
    tables: 24,
  },
  {
    name: 'two of each in 4 × 4',
    rows: [
      [1, 1, 0, 0],
      [1, 1, 0, 0],
      [0, 0, 1, 1],
      [0, 0, 1, 1],
    ],
    tables: 90,
  },
  {
    name: 'two of each in 5 × 5',
    rows: [
      [1, 1, 0, 0, 0],
      [0, 1, 1, 0, 0],
      [0, 0, 1, 1, 0],
      [0, 0, 0, 1, 1],
      [1, 0, 0, 0, 1],
    ],
    tables: 2040,
  },
  {
    name: 'full',
    rows: [
      [1, 1],
      [1, 1],
    ],
    tables: 1,
  },
  {
    name: 'nested, so that nothing can be dealt otherwise',
    rows: [
      [1, 1, 1],
      [1, 1, 0],
      [1, 0, 0],
    ],
    tables: 1,
  },
])('all tables with the margins of $name', ({ rows, tables }) => {
  expect(eachTableWithMargins(rows, 5000, () => {})).toBe(tables);
  expect(eachTableWithMargins(rows, tables - 1, () => {})).toBeNull();
});

test('a table of hundreds by hundreds is not counted out, however simple', () => {
  const rows = Array.from({ length: 300 }, () => Array.from({ length: 200 }, () => 1));
  expect(eachTableWithMargins(rows, 5000, () => {})).toBeNull();
});

test('shuffling with both margins kept comes to each of the 90 tables as often', () => {
  const { packed, next } = bothMargins([[1, 1, 0, 0], [1, 1, 0, 0], [0, 0, 1, 1], [0, 0, 1, 1]], stream('ninety')); // prettier-ignore
  const seen = new Map<string, number>();
  for (let turn = 0; turn < 45_000; turn += 1) {
    next();
    const table = packed.bits.join();
    seen.set(table, (seen.get(table) ?? 0) + 1);
  }
  expect(seen.size).toBe(90);
  const chiSquare = [...seen.values()].reduce((total, count) => total + (count - 500) ** 2 / 500, 0);
  expect(chiSquare).toBeLessThan(135.98); // 89 degrees of freedom, 0.1 % (scipy.stats.chi2.ppf)
});

test('dealing finds keeps the size of each pit and the number of each kind', () => {
  const counts = oneHeap([12, 3, 0, 7], 5, stream('heap'));
  const { counts: dealt, next } = dealFinds(counts.rows, stream('deal'));
  const totals = (cells: readonly number[]): number[][] => [
    [0, 1, 2, 3].map((pit) => cells.slice(pit * 5, pit * 5 + 5).reduce((a, b) => a + b, 0)),
    [0, 1, 2, 3, 4].map((kind) =>
      [0, 1, 2, 3].reduce((total, pit) => total + (cells[pit * 5 + kind] ?? 0), 0),
    ),
  ];
  for (let turn = 0; turn < 50; turn += 1) {
    next();
    expect(totals([...dealt])).toEqual(totals(counts.rows.flat()));
  }
});

/** Four standard errors of a share seen in `draws` draws, and one draw. */
const error = (share: number, draws: number): number =>
  4 * Math.sqrt((share * (1 - share)) / draws) + 1 / draws;

test('on 50 small tables seeded shuffles with both margins kept agree with every table counted out', () => {
  const chance = stream('fifty small tables');
  let compared = 0;
  for (let table = 0; table < 50; table += 1) {
    const counts = randomPresence(3 + uniformBelow(chance, 3), 4 + uniformBelow(chance, 3), 0.5, chance);
    const question = { by: 'jaccard', chance: stream(`table ${table}`) } as const;
    const exact = alikeByChance(counts, { ...question, shuffles: 0, exactUpTo: 100_000 });
    const seeded = alikeByChance(counts, { ...question, shuffles: 4000 });
    for (const [pair, { chance: share, isExact, draws }] of exact.entries()) {
      expect(isExact).toBe(true);
      expect(draws).toBeGreaterThan(0);
      expect(Math.abs((seeded[pair]?.chance ?? -1) - share)).toBeLessThan(error(share, 4000));
      if (share < 1) compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(100);
});

test('on 50 small tables kinds dealt to pits agree with the exact chance of two pits', () => {
  const chance = stream('fifty deals');
  for (let table = 0; table < 50; table += 1) {
    const pits = 3 + uniformBelow(chance, 5);
    const counts = randomPresence(pits, 3 + uniformBelow(chance, 4), 0.5, chance);
    const spread = counts.kinds.map((_, kind) =>
      counts.rows.reduce((total, row) => total + (row[kind] ?? 0), 0),
    );
    const shared = (rows: Counts['rows']): number =>
      (rows[0] ?? []).filter((held, kind) => held > 0 && (rows[1]?.[kind] ?? 0) > 0).length;
    const observed = shared(counts.rows);
    const exact = sharedByDeal(pits, spread, observed);
    const pair = companyTail(pits, spread[0] ?? 0, spread[1] ?? 0, 1);
    const { atLeastShared, together } = dealt(counts, observed, stream(`deal ${table}`), 4000);
    expect(Math.abs(atLeastShared - exact)).toBeLessThan(error(exact, 4000));
    expect(Math.abs(together - pair)).toBeLessThan(error(pair, 4000));
  }
});

test('on 50 small tables finds dealt between two pits agree with the hypergeometric chances', () => {
  const chance = stream('fifty heaps');
  for (let table = 0; table < 50; table += 1) {
    const rows = [0, 1].map(() => [uniformBelow(chance, 12) + 1, uniformBelow(chance, 12)]);
    const [[a = 0, b = 0] = [], [c = 0, d = 0] = []] = rows;
    const [first, second, kind] = [a + b, c + d, a + c];
    // With two kinds, likeness by Brainerd-Robinson is 200 less twice the difference of the first kind's percentages.
    const alike = (inFirst: number): number =>
      200 * (1 - Math.abs(inFirst / first - (kind - inFirst) / second));
    const { least, chances } = hypergeometric(first + second, kind, first);
    const exact = chances.reduce(
      (total, share, place) => total + (alike(least + place) >= alike(a) - 1e-9 ? share : 0),
      0,
    );
    const [pair] = alikeByChance(
      { pits: ['P1', 'P2'], kinds: ['flake', 'jaw'], rows },
      { by: 'brainerd-robinson', shuffles: 4000, chance: stream(`heap ${table}`) },
    );
    expect(pair?.observed).toBeCloseTo(alike(a), 9);
    expect(Math.abs((pair?.chance ?? -1) - exact)).toBeLessThan(error(exact, 4000));
  }
});

test('the likeness of dealt counts is the likeness of their rows', () => {
  const { rows } = oneHeap([9, 4, 0, 15], 6, stream('dealt rows'));
  const dealer = dealFinds(rows, stream('again'));
  const dealt = dealtLikeness(rows, dealer.counts);
  for (let turn = 0; turn < 20; turn += 1) {
    dealer.next();
    dealt.read();
    const row = (pit: number): number[] => Array.from(dealer.counts.subarray(6 * pit, 6 * pit + 6));
    expect(dealt.likeness(0, 3)).toBeCloseTo(brainerdRobinson(row(0), row(3)).value ?? -1, 9);
    expect(dealt.likeness(1, 0)).toBeCloseTo(brainerdRobinson(row(1), row(0)).value ?? -1, 9);
  }
});

test('one shuffle owes nothing that can be seen to the one before', () => {
  const { packed, next } = bothMargins(wendleMarsh.rows, stream('owes nothing'));
  const values: number[] = [];
  for (let turn = 0; turn < 10_000; turn += 1) {
    next();
    values.push(sharedBits(packed, 2, 4));
  }
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const apart = values.map((value) => value - mean);
  const together = apart.slice(1).reduce((total, value, turn) => total + value * (apart[turn] ?? 0), 0);
  expect(Math.abs(together / apart.reduce((total, value) => total + value * value, 0))).toBeLessThan(0.05);
});

test('the same seed gives the same chances, another seed others', () => {
  const ask = (seed: string): unknown =>
    alikeByChance(wendleMarsh, { by: 'dice', shuffles: 200, chance: stream(seed) });
  expect(ask('1')).toEqual(ask('1'));
  expect(ask('1')).not.toEqual(ask('2'));
});

test('the growing pile is told of each pair at each shuffle', () => {
  const told: number[] = [];
  const [pair] = alikeByChance(wendleMarsh, {
    by: 'jaccard',
    shuffles: 100,
    chance: stream('pile'),
    pairs: [[2, 4]],
    watch: (_, likeness) => told.push(likeness),
  });
  expect(pair).toMatchObject({ first: '3', second: '5', observed: 0.8, draws: 100 });
  expect(told).toHaveLength(100);
  expect(told.filter((likeness) => likeness >= 0.8)).toHaveLength(pair?.atLeast ?? -1);
});

test('presence has no proportions for Brainerd-Robinson', () => {
  const question = { by: 'brainerd-robinson', keeps: 'both', shuffles: 1, chance: stream('1') } as const;
  expect(() => alikeByChance(wendleMarsh, question)).toThrow(RangeError);
});

test('no shuffles leave nothing rarer than certain', () => {
  const [pair] = alikeByChance(wendleMarsh, { by: 'jaccard', shuffles: 0, chance: stream('1') });
  expect(pair).toMatchObject({ draws: 0, chance: 1 });
});
