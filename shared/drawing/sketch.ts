import type { FindToDraw } from './drawing.ts';
import type { Hand } from './hand.ts';
import type { Mark } from './mark.ts';

/** What a drawer works from. */
export interface Sketch {
  readonly find: FindToDraw;
  readonly hand: Hand;
  /** True where the drawing will be about 96 px across: ripples and scratches are left out or made fewer. */
  readonly isSmall: boolean;
}

/** One view of a thing; its drawn bounds are 0, 0 to the width and height, in mm. */
export interface View {
  readonly part: 'face' | 'edge' | 'section' | 'back';
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly Mark[];
}

/** The views of a thing: the face always, the others when they are asked for. */
export interface Sketched {
  readonly face: View;
  readonly more: () => readonly View[];
  /** A section that always stands at the left of the face: the convention for pottery. */
  readonly beside?: View;
  /** Height on the face, mm from the top, where the section was cut. */
  readonly cutAtMm?: number;
}

export type Drawer = (sketch: Sketch) => Sketched;
