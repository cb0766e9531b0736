import {
  drawPitSection,
  type PitToCut,
  drawFind,
  drawPitPlan,
  type Drawing,
  type FindToDraw,
  type PitPlan,
  type PitToDraw,
} from '../../shared/drawing/index.ts';

/** A face as it lies in a plan, for small places; the full drawing with its edge, section and scale for the hand and the cards. */
export type Cut = 'face' | 'full';

const finds = new Map<string, Drawing>();
const plans = new Map<string, PitPlan>();

/** Keeps what has been drawn for this build: a find is on five pages of every lesson that has it. */
function once<Value>(kept: Map<string, Value>, key: string, draw: () => Value): Value {
  const before = kept.get(key);
  if (before !== undefined) return before;
  const drawn = draw();
  kept.set(key, drawn);
  return drawn;
}

/** A find's drawing. The key is all that it is drawn from, so a changed find is drawn anew. */
export const drawnFind = (find: FindToDraw, cut: Cut): Drawing =>
  once(finds, `${cut} ${JSON.stringify(find)}`, () =>
    drawFind(
      find,
      cut === 'face' ? { view: 'lying', detail: 'small' } : { view: 'full', detail: 'large', scaleBar: true },
    ),
  );

/** A pit's plan with its finds. */
export const drawnPlan = (pit: PitToDraw, inPit: readonly FindToDraw[]): PitPlan =>
  once(plans, JSON.stringify([pit, inPit]), () => drawPitPlan(pit, inPit));

/** The `viewBox` of a drawing as SVG writes it. */
export const viewBoxOf = ({ viewBox: { x, y, width, height } }: Drawing): string =>
  `${x} ${y} ${width} ${height}`;

/** A pit cut through, with its fills. */
export const drawnSection = (pit: PitToCut): Drawing =>
  once(finds, `section ${JSON.stringify(pit)}`, () => drawPitSection(pit));
