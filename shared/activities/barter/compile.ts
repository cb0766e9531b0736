import {
  BAND_PLAY,
  checkWorld,
  coincidencesOf,
  makeWorld,
  type Proof,
  type World,
} from '../../bartering/index.ts';
import type { Fault } from '../../lesson/problem.ts';
import { youngest } from '../../library/bands.ts';
import { worldFrom } from '../../library/read-world.ts';
import { barterPaper } from '../../words/en/barter-paper.ts';
import { barterProblems } from '../../words/en/barter-problems.ts';
import { say } from '../../words/say.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import type { BarterActivity, ClassDeal, ClassActivity, GatheringActivity } from './activity.ts';
import { dealFor } from './class-deal.ts';
import { commonGoods, readGoods, type ReadGoods } from './goods.ts';
import type { BarterBlock } from './schema.ts';
import { unmadeFault } from './unmade.ts';

const FEWEST_CLASS_GOODS = 4;
const CLASS_GOODS = 14;
/**
 * Turns of aimless play behind the zero of a class that is compiled, shared out among plays of all its pupils: a
 * standard error of about 0.002 of the best total, in under 0.1 s.
 */
const CLASS_TURNS = 45_000;

const MOST_DEALS = 20;
const deals = new Map<string, ClassDeal>();

/** The deal for a class, kept: a lead who types elsewhere in the lesson does not wait for all the plays again. */
function classDeal(rest: Pick<ClassActivity, 'seed' | 'band' | 'goods'>, pupils: number): ClassDeal {
  const key = JSON.stringify([rest, pupils]);
  const before = deals.get(key);
  if (before !== undefined) return before;
  const dealt = dealFor(rest, pupils, Math.ceil(CLASS_TURNS / pupils));
  if (deals.size >= MOST_DEALS) deals.clear();
  deals.set(key, dealt);
  return dealt;
}

const stopped = (...faults: readonly Fault[]): Compiled<BarterActivity> => ({ activity: null, faults });

const base = (id: string, block: BarterBlock) => ({
  id,
  kind: 'barter' as const,
  title: block.title,
  minutes: block.minutes,
});

/** An activity of a world that is proved; null where the proof does not reach so far. */
function gatheringOf(
  id: string,
  block: BarterBlock,
  context: CompileContext,
  world: World,
  proof: Proof,
): GatheringActivity | null {
  const { par, chains, example, aimless } = proof;
  if (par === null || example === null || aimless === null) return null;
  const aim = world.goods.find((good) => good.id === world.aim)?.one ?? world.aim;
  return {
    ...base(id, block),
    play: 'gathering',
    question: block.question ?? say(barterPaper.question, { aim }),
    world,
    par,
    chains,
    aimlessAverage: aimless.average,
    example,
    wants: block.wants ?? BAND_PLAY[youngest(context.bands)].wants,
    coincidences: coincidencesOf(world),
  };
}

function compileMade(
  id: string,
  block: BarterBlock,
  make: NonNullable<BarterBlock['make']>,
  context: CompileContext,
): Compiled<BarterActivity> {
  const band = youngest(context.bands);
  const { traders, chain, aim } = make;
  const read: ReadGoods =
    make.goods === undefined
      ? { goods: commonGoods(Math.max(chain + 3, traders + chain), BAND_PLAY[band].hasGifts), faults: [] }
      : readGoods(make.goods, ['make', 'goods'], context);
  if (read.faults.length > 0) return stopped(...read.faults);
  const order = { band, traders, chainLength: chain, goods: read.goods };
  const made = makeWorld(aim === undefined ? order : { ...order, aim }, context.chance);
  if (made.world === null) return stopped(unmadeFault(made.why, make, read.goods, band));
  return { activity: gatheringOf(id, block, context, made.world, made.proof), faults: [] };
}

function compileWritten(
  id: string,
  block: BarterBlock,
  parts: NonNullable<BarterBlock['world']>,
  context: CompileContext,
): Compiled<BarterActivity> {
  const world = worldFrom(parts);
  const { faults, proof } = checkWorld(world, youngest(context.bands));
  const placed = faults.map((fault): Fault => ({ ...fault, path: ['world', ...fault.path] }));
  if (proof === null || placed.some(({ grade }) => grade === 'error')) return stopped(...placed);
  return { activity: gatheringOf(id, block, context, world, proof), faults: placed };
}

function compileClass(
  id: string,
  block: BarterBlock,
  written: NonNullable<BarterBlock['class']>,
  context: CompileContext,
): Compiled<BarterActivity> {
  const read: ReadGoods =
    written.goods === undefined
      ? { goods: commonGoods(CLASS_GOODS, false), faults: [] }
      : readGoods(written.goods, ['class', 'goods'], context);
  if (read.faults.length > 0) return stopped(...read.faults);
  const goods = read.goods.filter((good) => good.spoilsAfter === null && !good.onlyGiven);
  if (goods.length < FEWEST_CLASS_GOODS) {
    const words = barterProblems.classGoodsTooFew(goods.length, FEWEST_CLASS_GOODS);
    return stopped({ code: 'goods-too-few', grade: 'error', path: ['class', 'goods'], ...words });
  }
  const rest = { band: youngest(context.bands), goods, seed: context.chance.seed };
  const activity: ClassActivity = {
    ...base(id, block),
    play: 'class',
    question: block.question ?? barterPaper.classQuestion,
    ...rest,
    deal: classDeal(rest, written.pupils),
  };
  return { activity, faults: [] };
}

/** Compiles a barter block: a gathering made and proved, one written by hand and checked, or cards for a whole class. */
export function compileBarter(
  id: string,
  block: BarterBlock,
  context: CompileContext,
): Compiled<BarterActivity> {
  const written = (['make', 'world', 'class'] as const).filter((key) => block[key] !== undefined);
  if (written.length === 1) {
    if (block.make !== undefined) return compileMade(id, block, block.make, context);
    if (block.world !== undefined) return compileWritten(id, block, block.world, context);
    if (block.class !== undefined) return compileClass(id, block, block.class, context);
  }
  const second = written[1];
  return stopped({
    code: 'gathering-unclear',
    grade: 'error',
    path: second === undefined ? ['title'] : [second],
    atKey: true,
    ...barterProblems.settingUnclear(written),
  });
}
