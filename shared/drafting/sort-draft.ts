import { derive, shuffle } from '../chance/index.ts';
import { youngestAge, type Attribute, type Find } from '../library/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import { meritOf, type DraftContext, type Drafted, type MeritPart } from './draft.ts';
import { pickFinds, type Choice } from './pick-finds.ts';
import {
  bitsOf,
  difficulties,
  makePool,
  trayParts,
  traySizes,
  TRAY_WEIGHTS,
  type Pool,
  type TrayPart,
} from './trays-merit.ts';

/** The attributes a draft sorts by; what a thing is called tells nothing of it. */
const BY: readonly Attribute[] = ['made-by', 'material', 'used-for', 'age', 'state'];
const FEWEST = 3;
/** A pool larger than this is sampled, evenly over its values: likenesses are kept for every pair. ASM, by time. */
const LARGEST_POOL = 120;

/** Pinned finds, then the same number of finds from each value, as the seed has them. */
function poolOf(context: DraftContext, by: Attribute): readonly Find[] {
  const pinned = context.finds.filter(({ id }) => context.pins.has(id));
  const rest = context.finds.filter(({ id }) => !context.pins.has(id));
  if (context.finds.length <= LARGEST_POOL) return [...pinned, ...rest];
  const piles = new Map<string, Find[]>();
  for (const find of shuffle(derive(context.chance, `pool-${by}`), rest)) {
    const value = find.attributes[by];
    const pile = piles.get(value);
    if (pile === undefined) piles.set(value, [find]);
    // Those whose record is in question go to the bottom.
    else if (context.doubtful.has(find.id)) pile.unshift(find);
    else pile.push(find);
  }
  const pool = pinned.slice(0, LARGEST_POOL);
  while (pool.length < LARGEST_POOL && [...piles.values()].some((pile) => pile.length > 0)) {
    for (const pile of piles.values()) {
      const next = pool.length < LARGEST_POOL ? pile.pop() : undefined;
      if (next !== undefined) pool.push(next);
    }
  }
  return pool;
}

function tellParts(pool: Pool, { chosen }: Choice): readonly MeritPart[] {
  const values = trayParts(pool, chosen);
  const sizes = traySizes(pool, chosen).toSorted((a, b) => b - a);
  const hard = difficulties(pool, chosen);
  const count = chosen.length;
  const countOf = (holds: readonly boolean[]): number =>
    chosen.filter((index) => holds[index] === true).length;
  const most = Math.log2(Math.max(2, Math.min(pool.mostTrays, pool.values.length, count)));
  const told: Readonly<Record<TrayPart, string>> = {
    balance: words.balance(bitsOf(sizes), most, sizes),
    distinct: words.distinct(values.distinct),
    decoys: words.decoys(countOf(pool.isDecoy), count),
    difficulty: words.difficulty(Math.min(...hard), Math.max(...hard)),
    hazards: words.hazards(countOf(pool.isNear), count),
    certainty: words.certainty(count - countOf(pool.isDoubtful), count),
  };
  // The keys are those of the weights.
  return (Object.entries(TRAY_WEIGHTS) as [TrayPart, number][]).map(([name, weight]) => ({
    name,
    weight,
    value: values[name],
    told: told[name],
  }));
}

/** Trays by one attribute, its finds picked for merit; or why there can be none. */
function* draftBy(context: DraftContext, by: Attribute, count: number): Generator<void, Drafted, void> {
  const attribute = context.library.vocabulary.attributes.find(({ id }) => id === by);
  const label = attribute?.label ?? by;
  const finds = poolOf(context, by);
  const { band, trays: mostTrays } = context.limits;
  const age = youngestAge(context.bands);
  const pool = makePool(finds, by, {
    band,
    age,
    mostTrays,
    safety: context.library.safety,
    doubtful: context.doubtful,
  });
  if (pool.values.length < 2) return { candidates: [], lacking: [words.lackValues(label)] };
  yield;
  const fixed = finds.flatMap(({ id }, index) => (context.pins.has(id) ? [index] : [])).slice(0, count - 1);
  const choice = yield* pickFinds(pool, Math.min(count, finds.length), fixed, derive(context.chance, by));
  if (choice === null) return { candidates: [], lacking: [words.lackSound(label)] };
  const chosen = choice.chosen.flatMap((index) => finds[index] ?? []);
  const used = new Set(chosen.map(({ attributes }) => attributes[by]));
  const trays = (attribute?.values ?? []).map(({ id }) => id).filter((id) => used.has(id));
  const parts = tellParts(pool, choice);
  const ids = context.finds.map(({ id }) => id).filter((id) => chosen.some((find) => find.id === id));
  return {
    candidates: [
      {
        place: 1,
        title: words.sortTitle(attribute?.question ?? label),
        minutes: Math.max(3, Math.ceil((chosen.length * context.limits.secondsPerFind) / 60) + 2),
        lines: [
          `finds: [${ids.join(', ')}]`,
          `by: ${by}`,
          `trays: [${trays.join(', ')}]`,
          // Ages lie on a line, but for what has none.
          ...(by === 'age' && trays.length > 2 && !used.has('natural') ? ['ordered: true'] : []),
        ],
        merit: meritOf(parts),
        parts,
        finds: ids,
        summary: words.sortSummary(label, ids.length, trays.length, choice.isBest, choice.lookedAt),
      },
    ],
    lacking: [],
  };
}

/** Trays by each attribute: the finds that make the best of it. */
export function* draftSort(context: DraftContext): Generator<void, Drafted, void> {
  const { limits, minutesMost } = context;
  const inTime = Math.floor(
    (Math.min(limits.minutesPerActivity, minutesMost) - 2) * (60 / limits.secondsPerFind),
  );
  const count = Math.min(limits.finds, inTime, context.finds.length);
  if (context.finds.length < FEWEST)
    return { candidates: [], lacking: [words.lackFinds(context.finds.length, FEWEST)] };
  if (count < FEWEST) return { candidates: [], lacking: [words.lackTime(minutesMost, FEWEST + 2)] };
  const all: Drafted[] = [];
  for (const by of BY) {
    all.push(yield* draftBy(context, by, count));
    yield;
  }
  return {
    candidates: all.flatMap(({ candidates }) => candidates),
    lacking: all.flatMap(({ lacking }) => lacking),
  };
}
