import type { Trader, World } from './world.ts';
import { listed, placeOfTrader, type WorldFault } from './world-fault.ts';

const error = (fault: Omit<WorldFault, 'grade'>): WorldFault => ({ grade: 'error', ...fault });
const caution = (fault: Omit<WorldFault, 'grade'>): WorldFault => ({ grade: 'caution', ...fault });

function checkTrader(world: World, trader: Trader): WorldFault[] {
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

function checkAim(world: World): WorldFault[] {
  const { aim, pupil, traders } = world;
  const ids = world.goods.map(({ id }) => id);
  if (!ids.includes(aim)) {
    const mend = 'name one of the goods as the aim';
    return [
      error({
        code: 'aim-unknown',
        path: ['aim'],
        expected: `one of the goods: ${listed(ids)}`,
        received: aim,
        mend,
      }),
    ];
  }
  if ((pupil.holds[aim] ?? 0) > 0) {
    const mend = `take "${aim}" out of what you hold, or choose another aim`;
    return [
      error({
        code: 'aim-held',
        path: ['you', 'holds', aim],
        expected: 'an aim you do not hold yet',
        received: `${aim}, held from the start`,
        mend,
      }),
    ];
  }
  if (!traders.some((trader) => (trader.holds[aim] ?? 0) > 0)) {
    const mend = `let one of the traders hold "${aim}"`;
    return [
      error({
        code: 'aim-unheld',
        path: ['aim'],
        expected: 'an aim that somebody holds',
        received: `${aim}, held by nobody`,
        mend,
      }),
    ];
  }
  const worth = pupil.wants[aim]?.[0] ?? 0;
  const rivals = ids.filter((id) => id !== aim && (pupil.wants[id]?.[0] ?? 0) >= worth);
  if (rivals.length === 0) return [];
  const best = Math.max(...rivals.map((id) => pupil.wants[id]?.[0] ?? 0));
  const received =
    worth === 0 ? `no want for "${aim}"` : `"${aim}" at ${worth}, ${listed(rivals)} at as much or more`;
  const mend = `make the first "${aim}" worth ${best + 1} or more to you, or make ${listed(rivals)} worth less`;
  return [
    error({
      code: 'aim-unclear',
      path: ['you', 'wants'],
      expected: 'one good that you want more than any other: the aim',
      received,
      mend,
    }),
  ];
}

/** What can be seen of a world without playing it: names, counts, wants that rise, an aim that is not one. */
export function checkParts(world: World): WorldFault[] {
  const faults: WorldFault[] = [];
  for (const [list, code, key] of [
    [world.goods, 'good-repeated', 'goods'],
    [world.traders, 'trader-repeated', 'traders'],
  ] as const) {
    const ids = list.map(({ id }) => id);
    const twice = new Set(
      ids.filter((id, index) => ids.indexOf(id) !== index || (key === 'traders' && id === world.pupil.id)),
    );
    for (const id of twice)
      faults.push(
        error({
          code,
          path: [key, id],
          expected: 'a name used once',
          received: id,
          mend: `give one of them another name`,
        }),
      );
  }
  for (const trader of [world.pupil, ...world.traders]) faults.push(...checkTrader(world, trader));
  faults.push(...checkAim(world));
  // A good goes unused by a slip elsewhere: that slip is told first.
  if (faults.length > 0) return faults;
  const everyone = [world.pupil, ...world.traders];
  for (const { id } of world.goods) {
    if (everyone.some((trader) => (trader.holds[id] ?? 0) > 0)) continue;
    const mend = `let somebody hold "${id}", or leave it out`;
    faults.push(
      caution({
        code: 'good-unused',
        path: ['goods', id],
        atKey: true,
        expected: 'a good that somebody holds',
        received: `${id}, held by nobody`,
        mend,
      }),
    );
  }
  return faults;
}
