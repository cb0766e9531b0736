import { pick, stream, uniform } from '../../../shared/chance/index.ts';
import type { FindToDraw } from '../../../shared/drawing/index.ts';

/** Types with the ranges they are made in here, mm; ranges are judgements (ASM) save where the brief of sizes is a record. */
export const SIZES: readonly (readonly [
  objectType: string,
  length: readonly [number, number],
  width: readonly [number, number],
  thickness: readonly [number, number],
])[] = [
  ['flake', [20, 80], [15, 65], [3, 15]],
  ['blade', [35, 100], [10, 28], [2, 9]],
  ['end-scraper', [25, 60], [20, 50], [6, 18]],
  ['serrated-flake', [35, 75], [12, 32], [3, 10]],
  ['leaf-arrowhead', [20, 60], [12, 30], [2, 6]],
  ['oblique-arrowhead', [25, 50], [15, 35], [3, 6]],
  ['transverse-arrowhead', [25, 50], [15, 35], [3, 6]],
  ['core', [35, 100], [30, 90], [25, 70]],
  ['hammerstone', [45, 110], [40, 95], [30, 75]],
  ['polished-axe', [80, 200], [40, 80], [20, 45]],
  ['axe-roughout', [100, 220], [50, 95], [30, 60]],
  ['ground-edge-fragment', [15, 70], [12, 55], [4, 18]],
  ['burnt-flint', [30, 90], [25, 80], [20, 60]],
  ['antler-pick', [300, 600], [80, 200], [35, 60]],
  ['bone-pin', [50, 180], [4, 10], [4, 8]],
  ['pig-jaw', [90, 220], [35, 80], [18, 30]],
  ['cattle-bone', [60, 300], [30, 80], [20, 60]],
  ['grooved-ware-sherd', [25, 110], [20, 90], [6, 14]],
  ['quern-fragment', [60, 350], [50, 250], [25, 150]],
  ['polishing-stone-fragment', [60, 350], [50, 250], [25, 150]],
  ['chalk-disc', [40, 90], [40, 90], [12, 25]],
  ['chalk-block', [60, 160], [50, 120], [25, 60]],
  ['cordage', [60, 400], [2, 12], [2, 12]],
  ['charcoal', [5, 40], [4, 30], [3, 20]],
  ['hazelnut-shells', [8, 14], [8, 12], [1, 2]],
  ['natural-pebble', [30, 90], [25, 70], [20, 60]],
  ['iron-nail', [30, 100], [5, 14], [4, 10]],
  ['bottle-glass', [20, 70], [15, 60], [3, 8]],
  ['plastic-tag', [30, 80], [15, 40], [1, 4]],
  ['brick-fragment', [20, 90], [15, 80], [10, 60]],
  ['clay-pipe-stem', [20, 90], [6, 12], [6, 12]],
  ['some-new-thing', [10, 200], [10, 150], [5, 80]],
];

const STATES = ['whole', 'broken', 'burnt', 'worn'] as const;
const DECORATIONS = [undefined, 'plain', 'cordon', 'grooved'] as const;
const SIDES = [undefined, 'left', 'right'] as const;

/** Made-up finds of every type in turn, of sizes and states drawn by chance; the same ones each time. */
export function madeFinds(count: number): FindToDraw[] {
  const chance = stream('made finds');
  const within = ([low, high]: readonly [number, number]): number =>
    Math.round((low + uniform(chance) * (high - low)) * 10) / 10;
  return Array.from({ length: count }, (_, index) => {
    const row = SIZES[index % SIZES.length] ?? SIZES[0];
    if (row === undefined) throw new Error('no types');
    const [objectType, length, width, thickness] = row;
    const [side, decoration] = [pick(chance, SIDES), pick(chance, DECORATIONS)];
    return {
      id: `made-${index}`,
      objectType,
      material: 'flint',
      state: pick(chance, STATES),
      lengthMm: within(length),
      widthMm: within(width),
      thicknessMm: within(thickness),
      count: objectType === 'hazelnut-shells' ? 1 + (index % 31) : 1,
      ...(side === undefined ? {} : { side }),
      ...(decoration === undefined ? {} : { decoration }),
    };
  });
}
