import type { FindToDraw } from './drawing.ts';

/** A drawing in words, for those who hear it. */
export interface Description {
  /** What it is and how long: under a picture. */
  readonly short: string;
  /** What it is, its size and what shows. */
  readonly long: string;
  /** Size and what shows, and nothing a sort might ask for: no type, material, making, use, state or age. */
  readonly blind: string;
}

/** The name of a type in a sentence, and what its drawing shows. */
interface Words {
  readonly name: string;
  readonly shows: string;
}

const WORDS: { readonly [objectType: string]: Words } = {
  flake: {
    name: 'Flake',
    shows:
      'Thin, with sharp plain sides. Lines meet on its face; a dot at the foot marks where rings begin to spread.',
  },
  blade: {
    name: 'Blade',
    shows:
      'Long and narrow, at least twice as long as wide, with straight lines running down it and sharp sides.',
  },
  'end-scraper': {
    name: 'End scraper',
    shows: 'Narrow at the foot and round at the top, where a row of tiny steep chips follows the curve.',
  },
  'serrated-flake': {
    name: 'Serrated flake',
    shows: 'Long and narrow. One side is a row of tiny teeth, with a dotted band of shine beside it.',
  },
  'leaf-arrowhead': {
    name: 'Leaf-shaped arrowhead',
    shows:
      'The shape of a leaf, the same on both sides, with a sharp tip at the top and slim scars that meet in the middle.',
  },
  'oblique-arrowhead': {
    name: 'Oblique arrowhead',
    shows:
      'Lopsided and thin, with a tip at the top. One long side is plain and sharp; the other and the foot are trimmed.',
  },
  'transverse-arrowhead': {
    name: 'Transverse arrowhead',
    shows: 'Thin, with a broad sharp edge across the top and two trimmed sides that narrow to the foot.',
  },
  core: {
    name: 'Core',
    shows:
      'A chunky block with a flat top. Hollow scars run down from the top; one side has a rough dotted skin.',
  },
  hammerstone: {
    name: 'Hammerstone',
    shows: 'Rounded, with a patch of tiny dents at each end and a smooth middle.',
  },
  'polished-axe': {
    name: 'Polished axe head',
    shows: 'Smooth all over, with fine lines along it. It widens to one sharp curved edge at the bottom.',
  },
  'axe-roughout': {
    name: 'Axe roughout',
    shows: 'Long and thick. Scars meet along the middle on every part of it, and its sides are wavy.',
  },
  'ground-edge-fragment': {
    name: 'Piece of a ground tool',
    shows: 'Thin and small. One part is smooth with fine lines; another part has scars with rings.',
  },
  'burnt-flint': {
    name: 'Burnt flint',
    shows: 'A lump with cracks all over that close into little fields, and two small round hollows.',
  },
  'antler-pick': {
    name: 'Antler pick',
    shows:
      'A long beam with a knobbly ring at the foot. One point springs from beside the ring; the rest is handle.',
  },
  'bone-pin': {
    name: 'Bone pin',
    shows: 'Long, slim and smooth, with a small knob at the top and a point at the bottom.',
  },
  'pig-jaw': {
    name: 'Half of a pig’s lower jaw',
    shows:
      'Low and curved, with a row of teeth along the top, a long tooth at the front and a tall branch at the back.',
  },
  'cattle-bone': {
    name: 'Cattle bone',
    shows: 'Large, with fine lines along it. One end is wide and full of tiny holes.',
  },
  'grooved-ware-sherd': {
    name: 'Grooved Ware sherd',
    shows: 'A piece with angular edges, seen from outside; its even wall is drawn beside it.',
  },
  'quern-fragment': {
    name: 'Piece of a quern',
    shows:
      'A thick slab, round at one end and rough at the other. Its face is hollowed and dotted with dents.',
  },
  'polishing-stone-fragment': {
    name: 'Piece of a polishing stone',
    shows: 'A slab with angular edges. In its face is one smooth hollow with fine lines along it.',
  },
  'chalk-disc': { name: 'Chalk disc', shows: 'Almost a circle, thick and flat, with small slanting marks.' },
  'chalk-block': { name: 'Chalk block', shows: 'A block with rounded corners and small slanting marks.' },
  cordage: {
    name: 'Cordage',
    shows: 'Two strands that pass over and under each other, in a loose loop, with frayed ends.',
  },
  charcoal: {
    name: 'Charcoal',
    shows: 'A small block, black, with square cracks on its sides and curved rings on its top.',
  },
  'hazelnut-shells': {
    name: 'Hazelnut shells',
    shows: 'Several small thin curved pieces: some show ribs, some are hollow with jagged rims.',
  },
  'natural-pebble': {
    name: 'Natural pebble',
    shows: 'Rounded and smooth all over. No marks at its ends, no scars, no lines.',
  },
  'iron-nail': {
    name: 'Iron nail',
    shows: 'Long and slim with a wide flat head at the top and a rough, lumpy skin.',
  },
  'bottle-glass': {
    name: 'Bottle glass',
    shows: 'A curved three-cornered piece with thick clear edges and two streaks of shine.',
  },
  'plastic-tag': {
    name: 'Plastic tag',
    shows: 'Flat, with straight sides, a round hole at the top and lines of print.',
  },
  'brick-fragment': {
    name: 'Piece of brick',
    shows: 'A block with straight square corners, a rough end and a gritty face.',
  },
  'clay-pipe-stem': {
    name: 'Clay pipe stem',
    shows: 'A straight thin tube with a round hole down the middle.',
  },
};

const DECORATIONS: { readonly [decoration: string]: string } = {
  cordon: 'A raised band runs round it, with lines above and a zigzag below.',
  grooved: 'Bands of level lines and a zigzag cover it.',
  plain: 'It bears no pattern.',
};

/** A find in words: short, long, and one that gives no answer away. */
export function describeFind(find: FindToDraw): Description {
  const words = WORDS[find.objectType];
  const name = words?.name ?? sentence(find.objectType.replaceAll('-', ' '));
  const shows = find.photo?.shows ?? words?.shows ?? 'Only its outline is drawn.';
  const pattern = find.photo === undefined ? patternOf(find) : '';
  const decoration = pattern === '' ? '' : ` ${pattern}`;
  const size = sizeOf(find);
  const side = find.side === undefined ? '' : `, ${find.side} side`;
  const many = find.count > 1 ? `${find.count} pieces, the largest ` : '';
  return {
    short: `${name}${side}, ${find.count > 1 ? `${find.count} pieces` : `${find.lengthMm} mm long`}.`,
    long: `${name}${side}, ${find.state}, ${many}${size}. ${shows}${decoration}`,
    blind: `${sentence(`${many}${size}`)}. ${shows}${decoration}`,
  };
}

function patternOf({ objectType, decoration }: FindToDraw): string {
  if (objectType === 'grooved-ware-sherd') return DECORATIONS[decoration ?? 'grooved'] ?? '';
  if (objectType !== 'chalk-disc' && objectType !== 'chalk-block') return '';
  return decoration === 'plain' ? 'It bears no pattern.' : 'Scratched lines cross on its face.';
}

const sizeOf = (find: FindToDraw): string => `${find.lengthMm} by ${find.widthMm} by ${find.thicknessMm} mm`;

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
