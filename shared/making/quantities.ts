import { reckonAxe, reckonHead } from './axe.ts';
import { felling, reckonSteelFelling } from './felling.ts';
import type { MakingFigures, Measure } from './figures.ts';
import { grinding } from './grinding.ts';
import {
  type Part,
  type ReckonedUnit,
  type Reckoning,
  reckonPart,
  reckonProduct,
  timesOver,
} from './reckoning.ts';
import type { MakingRequest, Result } from './request.ts';
import { gather, type Head, measure, resolveHead, resolveTree, type Tree } from './resolve.ts';
import { knapping, knappingWithFailures, notShaped, pecking, reckonBreakage } from './shaping.ts';
import { massUsed, reckonMass, shapeEnds, surfaceUsed } from './size.ts';
import { blankGrams, noduleKg, plainPart } from './supplying.ts';

/** Something a lesson can ask for by name. */
export interface Quantity {
  readonly label: string;
  readonly unit: ReckonedUnit;
  /** What it depends on: an axe head's sizes and choices, a tree's, or numbers besides. */
  readonly needs: readonly ('head' | 'tree' | Measure)[];
  readonly reckon: (figures: MakingFigures, request: MakingRequest) => Result<Reckoning>;
}

type FromHead = (figures: MakingFigures, head: Head) => Reckoning;

const ofHead =
  (reckon: FromHead): Quantity['reckon'] =>
  (figures, request) => {
    const head = resolveHead(figures, request);
    return head.ok ? { ok: true, value: reckon(figures, head.value) } : head;
  };

const ofTree =
  (reckon: (figures: MakingFigures, tree: Tree) => Reckoning): Quantity['reckon'] =>
  (figures, request) => {
    const tree = resolveTree(figures, request);
    return tree.ok ? { ok: true, value: reckon(figures, tree.value) } : tree;
  };

const ofPart =
  (part: (figures: MakingFigures) => Part, unit: ReckonedUnit): Quantity['reckon'] =>
  (figures) => ({ ok: true, value: reckonPart(part(figures), unit) });

/** How the share of a nodule that is not waste differs. */
function keptEnds(figures: MakingFigures): { low: number; middle: number; high: number } {
  const { low, middle, high } = figures.coefficients['waste-share'];
  return { low: 1 - (high ?? middle), middle: 1 - middle, high: 1 - (low ?? middle) };
}

/** Ends turned about, for a factor one divides by. */
const inverse = ({ low, middle, high }: { low: number; middle: number; high: number }) => ({
  low: 1 / high,
  middle: 1 / middle,
  high: 1 / low,
});

const noduleUsed = (figures: MakingFigures, head: Head): Part['used'] => [
  figures.coefficients['waste-share'],
  ...massUsed(figures, head),
  ...surfaceUsed(figures, head),
];

/** The quantities a lesson can ask for. Adding one is one entry here. */
export const QUANTITIES = {
  'axe-hours': {
    label: 'The whole axe, from nodule to bound haft',
    unit: 'h',
    needs: ['head'],
    reckon: ofHead(reckonAxe),
  },
  'axe-mass': { label: 'Mass of the axe head', unit: 'g', needs: ['head'], reckon: ofHead(reckonMass) },
  'axes-in-a-nodule': {
    label: 'Axes of this size in a nodule, if no blank breaks',
    unit: 'count',
    needs: ['head', 'noduleKg'],
    reckon: (figures, request) => {
      const head = resolveHead(figures, request);
      const nodule = gather({ noduleKg: measure(figures, 'noduleKg', request.noduleKg) });
      if (!head.ok) return nodule.ok ? head : { ok: false, refusals: [...head.refusals, ...nodule.refusals] };
      if (!nodule.ok) return nodule;
      const kept = keptEnds(figures);
      const axes = (nodule.value.noduleKg * 1000 * kept.middle) / blankGrams(figures, head.value);
      const factors = [kept, inverse(shapeEnds(figures))];
      return {
        ok: true,
        value: reckonProduct(axes, factors, 'count', noduleUsed(figures, head.value), ['blanks that break']),
      };
    },
  },
  'breakage-risk': {
    label: 'Share of blanks that break',
    unit: 'share',
    needs: ['head'],
    reckon: (figures, request) => {
      const head = resolveHead(figures, request);
      if (!head.ok) return head;
      const risk = reckonBreakage(figures, head.value);
      return risk === null
        ? { ok: false, refusals: [{ kind: 'not-counted', stone: head.value.stone.id }] }
        : { ok: true, value: risk };
    },
  },
  'felling-minutes': {
    label: 'Felling a tree with a stone axe',
    unit: 'min',
    needs: ['tree', 'diameterCm'],
    reckon: ofTree((figures, tree) => reckonPart(felling(figures, tree), 'min')),
  },
  'felling-minutes-steel': {
    label: 'Felling the same tree with a steel axe',
    unit: 'min',
    needs: ['tree', 'diameterCm'],
    reckon: ofTree(reckonSteelFelling),
  },
  'grinding-hours': {
    label: 'Grinding and polishing, by the clock',
    unit: 'h',
    needs: ['head'],
    reckon: ofHead((figures, head) => reckonPart(grinding(figures, head), 'h')),
  },
  'hafting-hours': {
    label: 'The haft, from living tree to binding, with stone tools',
    unit: 'h',
    needs: [],
    reckon: ofPart((figures) => plainPart(figures, 'haft-hours', 'spread-haft'), 'h'),
  },
  'head-hours': {
    label: 'The axe head: shaping and grinding, broken blanks included',
    unit: 'h',
    needs: ['head'],
    reckon: ofHead(reckonHead),
  },
  'house-stakes-hours': {
    label: 'Felling the stakes of a house',
    unit: 'h',
    needs: ['tree', 'diameterCm', 'stakes'],
    reckon: (figures, request) => {
      const tree = resolveTree(figures, request);
      const stakes = gather({ stakes: measure(figures, 'stakes', request.stakes) });
      if (!tree.ok) return stakes.ok ? tree : { ok: false, refusals: [...tree.refusals, ...stakes.refusals] };
      if (!stakes.ok) return stakes;
      const count = stakes.value.stakes;
      if (!Number.isInteger(count)) {
        return { ok: false, refusals: [{ kind: 'not-whole', input: 'stakes', received: count }] };
      }
      // One maker with one axe fells them all: quick or slow throughout, so the spread does not shrink with the count.
      const part = timesOver(felling(figures, tree.value), count / 60);
      return { ok: true, value: reckonPart(part, 'h', ['carrying', 'trimming', 'pointing', 'sharpening']) };
    },
  },
  'knapping-minutes': {
    label: 'Roughing out, thinning and trimming one blank that does not break',
    unit: 'min',
    needs: ['head'],
    reckon: ofHead((figures, head) => reckonPart(knapping(figures, head), 'min', notShaped(head))),
  },
  'knapping-minutes-with-failures': {
    label: 'Knapping, the blanks that broke included',
    unit: 'min',
    needs: ['head'],
    reckon: ofHead((figures, head) =>
      reckonPart(knappingWithFailures(figures, head), 'min', notShaped(head)),
    ),
  },
  'nodule-mass': {
    label: 'Nodule needed for one axe',
    unit: 'kg',
    needs: ['head'],
    reckon: ofHead((figures, head) =>
      reckonProduct(
        noduleKg(figures, head),
        [inverse(keptEnds(figures)), shapeEnds(figures)],
        'kg',
        noduleUsed(figures, head),
        ['blanks that break'],
      ),
    ),
  },
  'pecking-hours': {
    label: 'Pecking a blank of tough stone to shape',
    unit: 'h',
    needs: ['head'],
    reckon: ofHead((figures, head) => reckonPart(pecking(figures, head), 'h')),
  },
  'sharpening-minutes': {
    label: 'Touching up a dulled edge',
    unit: 'min',
    needs: [],
    reckon: ofPart((figures) => plainPart(figures, 'resharpen-minutes', 'spread-resharpen'), 'min'),
  },
  'stone-against-steel': {
    label: 'Time with a stone axe for each unit of time with a steel one',
    unit: 'ratio',
    needs: [],
    reckon: ofPart((figures) => plainPart(figures, 'steel-ratio', 'spread-steel-ratio'), 'ratio'),
  },
  'waste-share': {
    label: 'Share of the nodule that ends as waste flakes',
    unit: 'share',
    needs: [],
    reckon: (figures) => {
      const waste = figures.coefficients['waste-share'];
      const ends = { low: waste.low ?? waste.middle, middle: waste.middle, high: waste.high ?? waste.middle };
      return { ok: true, value: reckonProduct(waste.middle, [ends], 'share', [waste]) };
    },
  },
} as const satisfies Readonly<Record<string, Quantity>>;

export type QuantityId = keyof typeof QUANTITIES;

/** The names of the quantities, in alphabetical order. */
export const quantityIds = Object.keys(QUANTITIES) as readonly QuantityId[]; // the keys of the literal above

/** True for the name of a quantity. @example isQuantityId('axe-hours') // true */
export const isQuantityId = (text: string): text is QuantityId => Object.hasOwn(QUANTITIES, text);

/**
 * A quantity by name, for what is asked, or why there is none.
 *
 * @example reckonQuantity(figures, 'axe-hours', { lengthMm: 120, widthMm: 52, thicknessMm: 27 })
 */
export const reckonQuantity = (
  figures: MakingFigures,
  quantity: QuantityId,
  request: MakingRequest,
): Result<Reckoning> => QUANTITIES[quantity].reckon(figures, request);
