import { GATHERING_GOODS, gatheringGoods, type Good } from '../../bartering/index.ts';
import { nearest } from '../../lesson/nearest.ts';
import type { Fault, Path } from '../../lesson/problem.ts';
import { slug } from '../../library/slug.ts';
import { barterProblems, goodNames } from '../../words/en/barter-problems.ts';
import type { CompileContext } from '../kind.ts';

/** Which good of the gathering a thing from a pit is, where its hours are known by that name. */
const SAME_GOOD: Readonly<Record<string, string>> = {
  'end-scraper': 'scraper',
  'leaf-arrowhead': 'arrowhead',
  'oblique-arrowhead': 'arrowhead',
  'antler-pick': 'pick',
  cordage: 'cord',
  'polished-axe': 'axehead',
};

export interface ReadGoods {
  readonly goods: readonly Good[];
  readonly faults: readonly Fault[];
}

/** Everything the site and the gathering know by a name that may be swapped. */
function knownGoods({ library }: CompileContext): readonly Good[] {
  const own = gatheringGoods();
  const types = library.vocabulary.objectTypes
    .filter(({ id }) => own.every((good) => good.id !== id))
    .map(({ id, label }): Good => {
      const hours = own.find((good) => good.id === SAME_GOOD[id])?.hours ?? null;
      return { id, ...goodNames(label), hours, spoilsAfter: null, onlyGiven: false };
    });
  return [...own, ...types];
}

/** The goods a block names, or the things of the pit it names; null where it names none. */
export function readGoods(
  written: readonly string[] | { readonly pit: string },
  path: Path,
  context: CompileContext,
): ReadGoods {
  const known = knownGoods(context);
  const faults: Fault[] = [];
  const fault = (
    at: Path,
    code: Fault['code'],
    words: ReturnType<typeof barterProblems.goodRepeated>,
    near: string | null = null,
  ) =>
    void faults.push({
      code,
      grade: 'error',
      path: at,
      ...words,
      ...(near === null ? {} : { replacement: near }),
    });
  if ('pit' in written) {
    const pit = context.site.pits.find(({ id }) => id === written.pit);
    if (pit === undefined) {
      const ids = context.site.pits.map(({ id }) => id);
      const near = nearest(written.pit, ids);
      fault([...path, 'pit'], 'find-unknown', barterProblems.pitUnknown(written.pit, near, ids), near);
      return { goods: [], faults };
    }
    const types = new Set(
      pit.finds.filter(({ role }) => role === 'evidence').map(({ attributes }) => attributes['object-type']),
    );
    return { goods: known.filter(({ id }) => types.has(id)), faults };
  }
  const goods: Good[] = [];
  for (const [index, name] of written.entries()) {
    const id = slug(name);
    const good = known.find((each) => each.id === id || each.many === name || each.one === name);
    if (good === undefined) {
      const ids = known.map((each) => each.id);
      const near = nearest(id, ids);
      fault(
        [...path, index],
        'good-unknown',
        barterProblems.goodUnknown(
          name,
          near,
          GATHERING_GOODS.map((each) => each.id),
        ),
        near,
      );
    } else if (goods.includes(good))
      fault([...path, index], 'good-repeated', barterProblems.goodRepeated(name));
    else goods.push(good);
  }
  return { goods, faults };
}

/** Common goods, the commonest first: those that keep and may be swapped, then, where there may be gifts, one that is given. */
export function commonGoods(count: number, hasGifts: boolean): readonly Good[] {
  const all = gatheringGoods();
  const keeping = all.filter((good) => good.spoilsAfter === null && !good.onlyGiven);
  if (!hasGifts) return keeping.slice(0, count);
  return [...keeping.slice(0, count - 1), ...all.filter(({ onlyGiven }) => onlyGiven).slice(0, 1)];
}
