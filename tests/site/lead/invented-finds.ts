import { derive, pick, shuffle, stream, uniform } from '../../../shared/chance/index.ts';

/** A find nobody ever dug: what a finds record would say of it, whatever list it is written in. */
export interface InventedFind {
  readonly number: number;
  readonly pit: number;
  readonly context: number;
  readonly thing: ThingName;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly massG: number;
  readonly isBroken: boolean;
}

interface Thing {
  /** The object and its material, in the product's words. */
  readonly id: string;
  readonly material: string;
  /** As the Bench shows it. */
  readonly label: string;
  readonly age: 'late-neolithic' | 'modern' | 'natural';
  readonly sizeMm: readonly [length: number, width: number, thickness: number];
  /** Grams of one that size. */
  readonly massG: number;
  readonly english: readonly [object: string, material: string];
  readonly german: readonly [object: string, material: string];
}

/** Invented sizes and weights; the words are those of the two made lists. */
export const THINGS = {
  axe: {
    id: 'polished-axe',
    material: 'flint',
    label: 'polished axe head',
    age: 'late-neolithic',
    sizeMm: [118, 52, 30],
    massG: 255,
    english: ['Polished axe', 'Flint'],
    german: ['Beil', 'Feuerstein'],
  },
  scraper: {
    id: 'end-scraper',
    material: 'flint',
    label: 'scraper',
    age: 'late-neolithic',
    sizeMm: [38, 34, 11],
    massG: 17,
    english: ['Scraper', 'Flint'],
    german: ['Kratzer', 'Feuerstein'],
  },
  flake: {
    id: 'flake',
    material: 'flint',
    label: 'flake',
    age: 'late-neolithic',
    sizeMm: [44, 30, 8],
    massG: 11.5,
    english: ['Flake', 'Flint'],
    german: ['Abschlag', 'Silex'],
  },
  blade: {
    id: 'blade',
    material: 'flint',
    label: 'blade',
    age: 'late-neolithic',
    sizeMm: [72, 20, 7],
    massG: 11,
    english: ['Blade', 'Flint'],
    german: ['Klinge', 'Feuerstein'],
  },
  core: {
    id: 'core',
    material: 'flint',
    label: 'core',
    age: 'late-neolithic',
    sizeMm: [64, 52, 40],
    massG: 170,
    english: ['Core', 'Chert'],
    german: ['Kernstein', 'Feuerstein'],
  },
  hammer: {
    id: 'hammerstone',
    material: 'quartzite',
    label: 'hammerstone',
    age: 'late-neolithic',
    sizeMm: [78, 66, 54],
    massG: 365,
    english: ['Hammer stone', 'Quartzite'],
    german: ['Schlagstein', 'Quarzit'],
  },
  pick: {
    id: 'antler-pick',
    material: 'antler',
    label: 'antler pick',
    age: 'late-neolithic',
    sizeMm: [330, 80, 44],
    massG: 230,
    english: ['Antler pick', 'Antler'],
    german: ['Geweihhacke', 'Geweih'],
  },
  pin: {
    id: 'bone-pin',
    material: 'bone',
    label: 'bone pin',
    age: 'late-neolithic',
    sizeMm: [92, 7, 6],
    massG: 4,
    english: ['Bone pin', 'Bone'],
    german: ['Knochennadel', 'Knochen'],
  },
  jaw: {
    id: 'pig-jaw',
    material: 'bone',
    label: 'pig’s jaw',
    age: 'late-neolithic',
    sizeMm: [128, 56, 20],
    massG: 68,
    english: ['Pig jaw', 'Animal bone'],
    german: ['Kiefer', 'Tierknochen'],
  },
  sherd: {
    id: 'grooved-ware-sherd',
    material: 'pottery',
    label: 'Grooved Ware sherd',
    age: 'late-neolithic',
    sizeMm: [52, 44, 9],
    massG: 27,
    english: ['Grooved Ware sherd', 'Pottery'],
    german: ['Scherbe', 'Keramik'],
  },
  quern: {
    id: 'quern-fragment',
    material: 'sandstone',
    label: 'piece of a quern',
    age: 'late-neolithic',
    sizeMm: [160, 120, 70],
    massG: 1700,
    english: ['Quern', 'Sandstone'],
    german: ['Mahlstein', 'Sandstein'],
  },
  pebble: {
    id: 'natural-pebble',
    material: 'flint',
    label: 'pebble',
    age: 'natural',
    sizeMm: [50, 42, 34],
    massG: 100,
    english: ['Pebble', 'Flint'],
    german: ['Kiesel', 'Feuerstein'],
  },
  nail: {
    id: 'iron-nail',
    material: 'iron',
    label: 'iron nail',
    age: 'modern',
    sizeMm: [62, 11, 10],
    massG: 15,
    english: ['Iron nail', 'Iron'],
    german: ['Nagel', 'Eisen'],
  },
  pipe: {
    id: 'clay-pipe-stem',
    material: 'clay-pipe',
    label: 'clay pipe stem',
    age: 'modern',
    sizeMm: [40, 9, 9],
    massG: 3.6,
    english: ['Clay pipe stem', 'Pipe clay'],
    german: ['Tonpfeife', 'Ton'],
  },
} as const satisfies Readonly<Record<string, Thing>>;
export type ThingName = keyof typeof THINGS;

const NAMES = Object.keys(THINGS) as readonly ThingName[]; // the keys are those of the literal
const PITS = [1, 2, 3] as const;
/** Each pit has most things, and is without these: there is something to compare. */
const WITHOUT: Readonly<Record<number, readonly ThingName[]>> = {
  1: ['quern', 'nail'],
  2: ['pick', 'core', 'pipe'],
  3: ['pin', 'sherd'],
};

/** The finds of three pits, about a dozen each: the same seed always gives the same. */
export function inventFinds(seed: string): readonly InventedFind[] {
  const chance = derive(stream(seed), 'invented-finds');
  const dealt = PITS.flatMap((pit) =>
    shuffle(
      chance,
      NAMES.filter((name) => !(WITHOUT[pit] ?? []).includes(name)),
    ).map((thing) => ({ pit, thing })),
  );
  return dealt.map(({ pit, thing }, index): InventedFind => {
    const { sizeMm, massG } = THINGS[thing];
    const scale = 0.88 + 0.24 * uniform(chance);
    const [lengthMm, widthMm, thicknessMm] = sizeMm.map((mm) => Math.max(2, Math.round(mm * scale)));
    if (lengthMm === undefined || widthMm === undefined || thicknessMm === undefined)
      throw new Error('a thing without a size');
    return {
      number: 201 + index,
      pit,
      context: pit * 100 + pick(chance, [1, 2]),
      thing,
      lengthMm,
      widthMm,
      thicknessMm,
      massG: Number((massG * scale ** 3).toPrecision(3)),
      isBroken: thing !== 'axe' && uniform(chance) < 0.2,
    };
  });
}
