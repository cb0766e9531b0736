import type { Good } from './world.ts';

/** How the hours in a good are known: middle and range, in hours of one adult's work. */
export interface GoodHours {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly status: 'RF' | 'DER' | 'ASM';
  readonly source: string;
}

/** A good of the invented gathering. That these things were swapped is invented; their hours are not. */
export interface GatheringGood {
  readonly id: string;
  readonly one: string;
  readonly many: string;
  /** Null: no figure is known to us. */
  readonly hours: GoodHours | null;
  /** Invented. */
  readonly spoilsAfter: number | null;
  /** Invented. */
  readonly onlyGiven: boolean;
}

const OWN = 'our own judgement; no figure found';
const MODEL = 'the making model, small flint axe of 120 mm';

const hours = (
  value: number,
  range: readonly [number, number] | null,
  status: GoodHours['status'],
  source: string,
): GoodHours => ({
  value,
  low: range === null ? null : range[0],
  high: range === null ? null : range[1],
  status,
  source,
});

const plain = (id: string, one: string, many: string, worked: GoodHours | null = null): GatheringGood => ({
  id,
  one,
  many,
  hours: worked,
  spoilsAfter: null,
  onlyGiven: false,
});

/** Goods for a gathering where a lead names none, the commonest first. */
export const GATHERING_GOODS: readonly GatheringGood[] = [
  plain('hide', 'a hide', 'hides'),
  plain(
    'flint',
    'a flint nodule',
    'flint nodules',
    hours(1.05, [0.27, 4.63], 'ASM', `finding one 1 h, testing it 3 min: ${OWN}`),
  ),
  plain('pot', 'a pot', 'pots'),
  plain('hazelnuts', 'a bag of hazelnuts', 'bags of hazelnuts'),
  plain('axe', 'a hafted axe', 'hafted axes', hours(26, [11.5, 58.9], 'DER', MODEL)),
  plain('cord', 'a coil of cord', 'coils of cord'),
  plain('antler', 'an antler', 'antlers'),
  plain('basket', 'a basket', 'baskets'),
  plain('pick', 'an antler pick', 'antler picks', hours(2, [0.5, 6], 'ASM', OWN)),
  plain('grain', 'a bag of grain', 'bags of grain'),
  plain(
    'arrowhead',
    'an arrowhead',
    'arrowheads',
    hours(
      0.05,
      null,
      'RF',
      'Woodlands film with A., course on making a leaf-shaped arrowhead (arrow-film): practised maker, from a struck flake',
    ),
  ),
  plain('bowl', 'a wooden bowl', 'wooden bowls'),
  plain(
    'axehead',
    'a ground axehead',
    'ground axeheads',
    hours(11.3, null, 'DER', `${MODEL}: find, test, flake and grind, no haft`),
  ),
  plain(
    'knife',
    'a hafted flint knife',
    'hafted flint knives',
    hours(
      2.7,
      null,
      'RF',
      "a beginner's post after a one-day flint workshop (knife-day): blade 40 min, handle 2 h",
    ),
  ),
  plain('scraper', 'a scraper', 'scrapers', hours(0.025, [0.008, 0.083], 'ASM', OWN)),
  plain('mat', 'a rush mat', 'rush mats'),
  plain('ochre', 'a lump of ochre', 'lumps of ochre'),
  plain('bark', 'a roll of birch bark', 'rolls of birch bark'),
  { ...plain('fish', 'a fish', 'fish'), spoilsAfter: 3 },
  { ...plain('bead', 'a jet bead', 'jet beads'), onlyGiven: true },
];

/** The goods of the gathering as a world takes them. */
export const gatheringGoods = (): Good[] =>
  GATHERING_GOODS.map((good) => ({ ...good, hours: good.hours?.value ?? null }));
