import type { Good, Handover, Trader, World } from '../../../shared/bartering/index.ts';

/** Goods by id, with nothing known of them but what is given. */
export const goodsOf = (ids: readonly string[], more: Readonly<Record<string, Partial<Good>>> = {}): Good[] =>
  ids.map((id) => ({ id, one: id, many: id, hours: null, spoilsAfter: null, onlyGiven: false, ...more[id] }));

export const traderOf = (id: string, more: Partial<Trader>): Trader => ({
  id,
  name: id,
  holds: {},
  wants: {},
  forSwapping: [],
  door: 'open',
  returns: null,
  ...more,
});

export const give = (goods: string, to: string, take: string): Handover => ({
  with: to,
  give: goods === '' ? [] : goods.split('+'),
  take: take === '' ? [] : take.split('+'),
});

/** By hand: antler to flint to axe, or antler to grain to flint to axe; the pot leads nowhere. */
export const smallWorld: World = {
  goods: goodsOf(['antler', 'flint', 'grain', 'pot', 'axe'], {
    antler: { hours: 1 },
    axe: { hours: 26 },
    flint: { hours: 2 },
  }),
  pupil: traderOf('you', {
    holds: { antler: 1 },
    wants: { antler: [1], grain: [3], flint: [4], pot: [5], axe: [9] },
    forSwapping: ['grain', 'flint'],
  }),
  traders: [
    traderOf('ama', { holds: { flint: 1, grain: 1 }, wants: { antler: [5], flint: [2], grain: [2] } }),
    traderOf('bero', {
      holds: { flint: 1, pot: 1 },
      wants: { grain: [4], flint: [3], pot: [1], antler: [1] },
    }),
    traderOf('cale', { holds: { axe: 1 }, wants: { flint: [6], axe: [5], pot: [2] } }),
  ],
  aim: 'axe',
  bundle: 1,
};
