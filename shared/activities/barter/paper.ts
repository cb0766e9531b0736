import { ringsOf, type Holding, type Trader, type World } from '../../bartering/index.ts';
import type { Sheet, SheetThing, TraderCard } from '../kind.ts';
import type { BarterActivity, ClassActivity, GatheringActivity } from './activity.ts';

const SPARE_ROWS = 5;

const thingOf = (goods: World['goods'], id: string, count = 1): SheetThing => {
  const good = goods.find((each) => each.id === id);
  return { good: id, words: count === 1 || good === undefined ? (good?.one ?? id) : `${count} ${good.many}` };
};

const things = (goods: World['goods'], holding: Holding): readonly SheetThing[] =>
  Object.entries(holding)
    .filter(([, count]) => count > 0)
    .map(([id, count]) => thingOf(goods, id, count));

/** Wants as they are read: most first; those that matter alike in the order of the goods. */
function wantsOf(goods: World['goods'], wants: Trader['wants']): TraderCard['wants'] {
  const wanted = goods
    .map(({ id }) => ({ ...thingOf(goods, id), worths: (wants[id] ?? []).filter((worth) => worth > 0) }))
    .filter(({ worths }) => worths.length > 0)
    .toSorted((a, b) => (b.worths[0] ?? 0) - (a.worths[0] ?? 0));
  const steps = [...new Set(wanted.map(({ worths }) => worths[0] ?? 0))];
  return wanted.map((want) => ({ ...want, rank: steps.indexOf(want.worths[0] ?? 0) + 1 }));
}

const cardOf = (world: World, trader: Trader): TraderCard => ({
  name: trader.name,
  isPupil: trader.id === world.pupil.id,
  has: things(world.goods, trader.holds),
  wants: wantsOf(world.goods, trader.wants),
  isShut: trader.door === 'gift',
  returns: trader.returns === null ? null : thingOf(world.goods, trader.returns).words,
});

/** Goods of one side in words: "2 hides", "a hide and a pot". */
function listOf(goods: World['goods'], ids: readonly string[]): string {
  const counts: Record<string, number> = {};
  for (const id of ids) counts[id] = (counts[id] ?? 0) + 1;
  return things(goods, counts)
    .map(({ words }) => words)
    .join(' + ');
}

function paperGathering(activity: GatheringActivity): readonly Sheet[] {
  const { title, question, world, par, chains, example } = activity;
  const traders = [world.pupil, ...world.traders];
  const nameOf = (id: string): string => traders.find((trader) => trader.id === id)?.name ?? id;
  return [
    {
      part: 'trader-cards',
      title,
      showsWorths: world.bundle > 1,
      cards: traders.map((trader) => cardOf(world, trader)),
    },
    {
      part: 'ledger',
      title,
      question,
      begins: things(world.goods, world.pupil.holds).map(({ words }) => words),
      aim: thingOf(world.goods, world.aim).words,
      rows: par + SPARE_ROWS,
    },
    {
      part: 'chain-answer',
      title,
      question,
      par,
      chains,
      steps: example.map((step) => ({
        with: nameOf(step.with),
        gives: listOf(world.goods, step.give),
        takes: listOf(world.goods, step.take),
      })),
    },
  ];
}

function paperClass(activity: ClassActivity): readonly Sheet[] {
  const { title, question, goods, deal } = activity;
  return [
    {
      part: 'want-cards',
      title,
      cards: deal.cards.map(({ number, holds, wants }) => ({
        number,
        has: { ...thingOf(goods, holds), worth: wants[holds]?.[0] ?? 0 },
        wants: Object.entries(wants)
          .filter(([id]) => id !== holds)
          .map(([id, worths]) => ({ ...thingOf(goods, id), worth: worths[0] ?? 0 })),
      })),
    },
    {
      part: 'class-answer',
      title,
      question,
      pupils: deal.cards.length,
      possible: deal.possible,
      bestTotal: deal.bestTotal,
      aimlessTotal: deal.aimlessShare * deal.bestTotal,
      straight: deal.straightPlan,
      rings: ringsOf(deal.cards, deal.takesFrom),
    },
  ];
}

/** A gathering on paper: cards for those round the fire, a ledger of swaps, the lead's answer; or want cards for a class. */
export const paperBarter = (activity: BarterActivity): readonly Sheet[] =>
  activity.play === 'gathering' ? paperGathering(activity) : paperClass(activity);
