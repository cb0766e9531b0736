import type { Trader, World } from './world.ts';
import { error, listed, placeOfTrader, type WorldFault } from './world-fault.ts';

/** What is wrong with one trader's own lines, the pupil's among them. */
export function checkTrader(world: World, trader: Trader): WorldFault[] {
  const faults: WorldFault[] = [];
  const place = placeOfTrader(world.pupil.id, trader.id);
  const known = new Map(world.goods.map((good) => [good.id, good]));
  const expected = `one of the goods: ${listed([...known.keys()])}`;
  for (const key of ['holds', 'wants'] as const) {
    for (const good of Object.keys(trader[key])) {
      if (known.has(good)) continue;
      const mend = `add "${good}" to the goods, or name one of those there are`;
      faults.push(
        error({
          code: 'good-unknown',
          path: [...place, key, good],
          atKey: true,
          expected,
          received: good,
          mend,
        }),
      );
    }
  }
  for (const good of trader.forSwapping) {
    if ((trader.wants[good]?.[0] ?? 0) > 0) continue;
    const mend = known.has(good) ? `say what "${good}" is worth under wants` : `add "${good}" to the goods`;
    faults.push(
      error({
        code: 'good-unknown',
        path: [...place, 'for-swapping'],
        expected: 'goods that are wanted',
        received: good,
        mend,
      }),
    );
  }
  for (const [good, count] of Object.entries(trader.holds)) {
    if (Number.isInteger(count) && count >= 0 && count <= 99) continue;
    const mend = 'write how many there are';
    faults.push(
      error({
        code: 'count-unfit',
        path: [...place, 'holds', good],
        expected: 'a whole number from 0 to 99',
        received: `${count}`,
        mend,
      }),
    );
  }
  for (const [good, worths] of Object.entries(trader.wants)) {
    const path = [...place, 'wants', good];
    const odd = worths.find((worth) => !Number.isInteger(worth) || worth < 0 || worth > 999);
    if (odd !== undefined) {
      const mend = 'write worths as whole numbers, the first of the good first';
      faults.push(
        error({
          code: 'count-unfit',
          path,
          expected: 'whole numbers from 0 to 999',
          received: `${odd}`,
          mend,
        }),
      );
    }
    const at = worths.findIndex((worth, index) => worth > (worths[index - 1] ?? Infinity));
    if (at < 0) continue;
    const mend = `write ${worths[at - 1]} or less for number ${at + 1}`;
    const received = `${worths[at]} after ${worths[at - 1]}`;
    faults.push(
      error({
        code: 'wants-rise',
        path,
        expected: 'each worth no more than the one before it',
        received,
        mend,
      }),
    );
  }
  return [...faults, ...checkReturns(world, trader)];
}

function checkReturns(world: World, trader: Trader): WorldFault[] {
  const place = placeOfTrader(world.pupil.id, trader.id);
  const { returns } = trader;
  if (returns === null) {
    if (trader.door === 'open') return [];
    const mend = `say what ${trader.name} returns for a gift, or open the door`;
    return [
      error({
        code: 'door-never-opens',
        path: [...place, 'door'],
        expected: 'something given in return for a gift',
        received: 'nothing',
        mend,
      }),
    ];
  }
  const path = [...place, 'returns'];
  const good = world.goods.find(({ id }) => id === returns);
  if ((trader.holds[returns] ?? 0) === 0) {
    const mend = `let ${trader.name} hold "${returns}", or return one of: ${listed(Object.keys(trader.holds))}`;
    return [
      error({
        code: 'return-unheld',
        path,
        expected: `something ${trader.name} holds`,
        received: returns,
        mend,
      }),
    ];
  }
  if (good === undefined || good.spoilsAfter === null) return [];
  const mend = `choose something that keeps, or leave out spoils-after of "${returns}"`;
  return [
    error({
      code: 'return-spoils',
      path,
      expected: 'something that keeps until it is given back',
      received: `${returns}, which spoils`,
      mend,
    }),
  ];
}
