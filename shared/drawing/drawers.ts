import { lump } from './outline.ts';
import { axeRoughout, groundEdgeFragment, polishedAxe } from './shapes/axe.ts';
import { leafArrowhead, obliqueArrowhead, transverseArrowhead } from './shapes/arrowhead.ts';
import { blade, serratedFlake } from './shapes/blade.ts';
import { antlerPick, bonePin, cattleBone, pigJaw } from './shapes/bone.ts';
import { brickFragment, clayPipeStem, groovedWareSherd } from './shapes/clay.ts';
import { endScraper, flake } from './shapes/flake.ts';
import { bottleGlass, ironNail, plasticTag } from './shapes/modern.ts';
import { charcoal, cordage, hazelnutShells } from './shapes/plant.ts';
import {
  burntFlint,
  chalkBlock,
  chalkDisc,
  core,
  hammerstone,
  naturalPebble,
  polishingStoneFragment,
  quernFragment,
} from './shapes/stone.ts';
import type { Drawer } from './sketch.ts';

/** A drawer for each object type we know; any other is drawn as a plain lump of its size. */
export const DRAWERS: ReadonlyMap<string, Drawer> = new Map([
  ['flake', flake],
  ['blade', blade],
  ['end-scraper', endScraper],
  ['serrated-flake', serratedFlake],
  ['leaf-arrowhead', leafArrowhead],
  ['oblique-arrowhead', obliqueArrowhead],
  ['transverse-arrowhead', transverseArrowhead],
  ['core', core],
  ['hammerstone', hammerstone],
  ['polished-axe', polishedAxe],
  ['axe-roughout', axeRoughout],
  ['ground-edge-fragment', groundEdgeFragment],
  ['burnt-flint', burntFlint],
  ['antler-pick', antlerPick],
  ['bone-pin', bonePin],
  ['pig-jaw', pigJaw],
  ['cattle-bone', cattleBone],
  ['grooved-ware-sherd', groovedWareSherd],
  ['quern-fragment', quernFragment],
  ['polishing-stone-fragment', polishingStoneFragment],
  ['chalk-disc', chalkDisc],
  ['chalk-block', chalkBlock],
  ['cordage', cordage],
  ['charcoal', charcoal],
  ['hazelnut-shells', hazelnutShells],
  ['natural-pebble', naturalPebble],
  ['iron-nail', ironNail],
  ['bottle-glass', bottleGlass],
  ['plastic-tag', plasticTag],
  ['brick-fragment', brickFragment],
  ['clay-pipe-stem', clayPipeStem],
]);

/** A find of a type we have no drawing for: its size, and nothing claimed about its shape. */
export const anyThing: Drawer = ({ find, hand }) => {
  const curve = lump(find.widthMm, find.lengthMm, hand, 3, 0.03, 10);
  return {
    face: {
      part: 'face',
      widthMm: find.widthMm,
      heightMm: find.lengthMm,
      marks: [{ ink: 'outline', path: curve.path, part: 'outline' }],
    },
    more: () => [],
  };
};
