import { checkSize } from './check-size.ts';
import { checkTrader } from './check-trader.ts';
import { idleBecause } from './idle.ts';
import type { World } from './world.ts';
import { caution, error, listed, type WorldFault } from './world-fault.ts';

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
  const faults = checkSize(world);
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
  for (const trader of world.traders) {
    const because = idleBecause(world, trader);
    if (because === null) continue;
    const isWanting = because === 'wants-nothing-there';
    const expected = `something ${trader.name} ${isWanting ? 'wants that another holds' : 'holds that you want'}`;
    const mend = `let ${trader.name} ${isWanting ? 'want' : 'hold'} something, or leave ${trader.name} out`;
    faults.push(
      caution({
        code: 'trader-idle',
        path: ['traders', trader.id],
        atKey: true,
        expected,
        received: 'nothing',
        mend,
      }),
    );
  }
  return faults;
}
