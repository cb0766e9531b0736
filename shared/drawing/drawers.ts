import { lump } from './outline.ts';
import { axeRoughout, groundEdgeFragment, polishedAxe } from './shapes/axe.ts';
import { leafArrowhead, obliqueArrowhead, transverseArrowhead } from './shapes/arrowhead.ts';
import { blade, serratedFlake } from './shapes/blade.ts';
import { antlerPick } from './shapes/antler-pick.ts';
import { bonePin } from './shapes/bone-pin.ts';
import { cattleBone } from './shapes/cattle-bone.ts';
import { pigJaw } from './shapes/pig-jaw.ts';
import { brickFragment } from './shapes/brick-fragment.ts';
import { clayPipeStem } from './shapes/clay-pipe-stem.ts';
import { groovedWareSherd } from './shapes/sherd.ts';
import { endScraper, flake } from './shapes/flake.ts';
import { bottleGlass, ironNail, plasticTag } from './shapes/modern.ts';
import { charcoal } from './shapes/charcoal.ts';
import { cordage } from './shapes/cordage.ts';
import { hazelnutShells } from './shapes/hazelnut-shells.ts';
import { burntFlint } from './shapes/burnt-flint.ts';
import { chalkBlock, chalkDisc } from './shapes/chalk.ts';
import { core } from './shapes/core.ts';
import { hammerstone } from './shapes/hammerstone.ts';
import { naturalPebble } from './shapes/natural-pebble.ts';
import { polishingStoneFragment, quernFragment } from './shapes/slab.ts';
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

/** The object types that have a drawing of their own. */
export const TYPES_DRAWN: readonly string[] = [...DRAWERS.keys()];

/** A find of a type we have no drawing for: its size, and nothing claimed about its shape. */
export const anyThing: Drawer = ({ find, hand }) => {
  const curve = lump(find.widthMm, find.lengthMm, hand, 3, 0.03, 10);
  return {
    face: {
      part: 'face',
      widthMm: find.widthMm,
      heightMm: find.lengthMm,
      marks: [{ ink: 'unknown', path: curve.path, part: 'outline' }],
    },
    more: () => [],
  };
};
