import load from 'highs';
import { describe, expect, test } from 'vitest';
import { BANDS } from '../../../shared/library/bands.ts';
import {
  bestAssignment,
  bestExchange,
  deal,
  ringsOf,
  type Card,
  type Deal,
} from '../../../shared/bartering/index.ts';
import { shuffle, stream, uniformBelow } from '../../../shared/chance/index.ts';

const GOODS = [
  'hide',
  'flint',
  'pot',
  'nuts',
  'axe',
  'cord',
  'antler',
  'basket',
  'pick',
  'grain',
  'bowl',
  'mat',
];
const SIZES = Array.from({ length: 33 }, (_, index) => index + 4);
const DEALS_EACH = 200;

const deals = SIZES.flatMap((pupils) =>
  Array.from({ length: DEALS_EACH }, (_, index) => {
    const band = BANDS[index % BANDS.length] ?? '7-9';
    const seed = `class-${pupils}-${index}`;
    return { seed, band, pupils, dealt: deal({ pupils, band, goods: GOODS }, stream(seed)) };
  }),
);

const worth = (card: Card | undefined, good: string | undefined): number => card?.wants[good ?? '']?.[0] ?? 0;

/** A plan gone through by hand: each takes from the next in the ring; true when all are in one ring and all gain. */
function allGain(cards: readonly Card[], rings: readonly (readonly number[])[]): boolean {
  const seen = rings.flat();
  if (seen.length !== cards.length || new Set(seen).size !== cards.length) return false;
  const byNumber = new Map(cards.map((card) => [card.number, card]));
  return rings.every((ring) =>
    ring.every((number, at) => {
      const card = byNumber.get(number);
      const from = byNumber.get(ring[(at + 1) % ring.length] ?? 0);
      return worth(card, from?.holds) > worth(card, card?.holds);
    }),
  );
}

/** The greatest sum of gains by the reference solver: who may take whose, each thing once, each pupil one. */
function optimum(
  solver: Awaited<ReturnType<typeof load>>,
  cards: readonly Card[],
  least: number,
): number | null {
  const cells = cards.flatMap((card, row) =>
    cards.flatMap((other, column) => {
      const gain = worth(card, other.holds) - worth(card, card.holds);
      return gain >= least || (least <= 0 && row === column) ? [{ row, column, gain }] : [];
    }),
  );
  const each = (key: 'row' | 'column'): string[] =>
    cards.map((_, index) => {
      const names = cells
        .filter((cell) => cell[key] === index)
        .map(({ row, column }) => `x_${row}_${column}`);
      return names.length === 0 ? '' : ` ${key}${index}: ${names.join(' + ')} = 1`;
    });
  const rows = [...each('row'), ...each('column')];
  if (rows.includes('')) return null;
  const aim = cells.map(({ row, column, gain }) => `${gain} x_${row}_${column}`).join(' + ');
  const names = cells.map(({ row, column }) => ` x_${row}_${column}`).join('\n');
  const answer = solver.solve(
    `Maximize\n obj: ${aim}\nSubject To\n${rows.join('\n')}\nBinary\n${names}\nEnd\n`,
  );
  return answer.Status === 'Optimal' ? Math.round(answer.ObjectiveValue) : null;
}

describe('200 deals for every class from 4 to 36', () => {
  test('everybody can gain by straight swaps alone, with one ring of three in an odd class', () => {
    expect(deals).toHaveLength(6_600);
    const wrong = deals.filter(({ dealt, pupils }) => {
      const sizes = dealt.straightPlan.map((ring) => ring.length).sort((a, b) => a - b);
      const isStraight =
        sizes.slice(0, -1).every((size) => size === 2) && sizes.at(-1) === (pupils % 2 === 0 ? 2 : 3);
      return !isStraight || !allGain(dealt.cards, dealt.straightPlan);
    });
    expect(wrong.map(({ seed }) => seed)).toEqual([]);
  });

  test('the best exchange is one in which all gain, and its gains add up to the best total', () => {
    const wrong = deals.filter(({ dealt }) => {
      const rings = ringsOf(dealt.cards, dealt.takesFrom);
      const gains = dealt.cards.map((card, index) => {
        const from = dealt.cards.find(({ number }) => number === dealt.takesFrom[index]);
        return worth(card, from?.holds) - worth(card, card.holds);
      });
      return (
        !dealt.possible ||
        !allGain(dealt.cards, rings) ||
        gains.reduce((a, b) => a + b, 0) !== dealt.bestTotal
      );
    });
    expect(wrong.map(({ seed }) => seed)).toEqual([]);
  });

  test('no pupil holds what is worth nothing, and everybody’s own thing adds up to the start', () => {
    const wrong = deals.filter(({ dealt }) => {
      const own = dealt.cards.map((card) => worth(card, card.holds));
      return own.some((one) => one < 1) || own.reduce((a, b) => a + b, 0) !== dealt.startTotal;
    });
    expect(wrong.map(({ seed }) => seed)).toEqual([]);
  });

  test('from 11 on, rings do better than straight swaps alone', () => {
    const planTotal = ({ cards, straightPlan }: Deal): number =>
      straightPlan
        .flatMap((ring) =>
          ring.map(
            (number, at) => [cards[number - 1], cards[(ring[(at + 1) % ring.length] ?? 1) - 1]] as const,
          ),
        )
        .reduce((sum, [card, from]) => sum + worth(card, from?.holds) - worth(card, card?.holds), 0);
    const older = deals.filter(({ band }) => band === '11-14' || band === '14-16');
    expect(older.filter(({ dealt }) => dealt.bestTotal <= planTotal(dealt)).map(({ seed }) => seed)).toEqual(
      [],
    );
  });
});

describe('against HiGHS', () => {
  test('the stated best is the optimum, with all gaining, with nobody worse off and at any cost, in 45 deals of all sizes', async () => {
    const solver = await load();
    for (const { seed, dealt } of deals.filter((_, index) => index % 149 === 0)) {
      for (const least of [1, 0, -100]) {
        expect({ seed, least, best: optimum(solver, dealt.cards, least) }).toEqual({
          seed,
          least,
          best: dealt.bestTotal,
        });
      }
    }
  });

  test('with cards dealt blindly too, where not all can gain', async () => {
    const solver = await load();
    const tally = { possible: 0, not: 0 };
    for (let hand = 0; hand < 60; hand += 1) {
      const chance = stream(`blind-${hand}`);
      const cards = Array.from({ length: 3 + uniformBelow(chance, 5) }, (_, index): Card => {
        const wants = shuffle(chance, GOODS.slice(0, 5))
          .slice(0, 4)
          .map((good) => [good, [1 + uniformBelow(chance, 9)]] as const);
        return {
          number: index + 1,
          holds: GOODS[uniformBelow(chance, 5)] ?? '',
          wants: Object.fromEntries(wants),
        };
      });
      const mine = bestExchange(cards);
      const withAll = optimum(solver, cards, 1);
      expect({ hand, possible: mine.possible }).toEqual({ hand, possible: withAll !== null });
      expect({ hand, best: mine.bestTotal }).toEqual({ hand, best: withAll ?? optimum(solver, cards, 0) });
      tally[mine.possible ? 'possible' : 'not'] += 1;
    }
    expect(tally.possible).toBeGreaterThan(3);
    expect(tally.not).toBeGreaterThan(3);
  });
});

// By hand: the three by three of a schoolbook; 3 + 4 + 4 = 11 is more than any of the other five ways.
test('three to three by hand', () => {
  expect(
    bestAssignment([
      [1, 3, 2],
      [4, 1, 1],
      [2, 3, 4],
    ]),
  ).toEqual([1, 0, 2]);
  expect(bestAssignment([])).toEqual([]);
  expect(() => bestAssignment([[1, 2]])).toThrow(RangeError);
  expect(() => bestAssignment([[Number.NaN]])).toThrow(RangeError);
});

test('a class too small or too large, or too few goods, is a mistake of ours', () => {
  for (const pupils of [3, 37, 4.5])
    expect(() => deal({ pupils, band: '7-9', goods: GOODS }, stream('1'))).toThrow(RangeError);
  expect(() => deal({ pupils: 8, band: '7-9', goods: ['hide', 'pot', 'axe'] }, stream('1'))).toThrow(
    RangeError,
  );
});

test('nobody at all: nothing is possible', () => {
  expect(bestExchange([])).toEqual({ possible: false, bestTotal: 0, takesFrom: [] });
});
