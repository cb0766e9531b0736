import { derive, stream } from '../chance/index.ts';
import { drawFind } from './draw-find.ts';
import type { FindToDraw, PitPlan, PitToDraw } from './drawing.ts';
import { handOf } from './hand.ts';
import { inked, inkText, markup, type Mark } from './mark.ts';
import { linePath } from './path.ts';
import { ground, litter, PLAN_FOOT_MM, PLAN_MARGIN_MM, slopePart } from './plan-ground.ts';
import { layOut, triangleOf, type Floor } from './plan-layout.ts';
import type { Point } from './point.ts';

/** A screen plan is often this wide, and what is pressed is this far apart, px: WCAG 2.2 success criterion 2.5.5. */
const NARROW_PX = 350;
const PRESS_PX = 44;
/** The side of a number's triangle on a narrow plan, px. */
const TAG_PX = 25;

/**
 * A pit seen from above, with places for its finds: none touches another, and each number stands clear.
 * The same pit and finds always give the same plan.
 *
 * @throws RangeError when there are more finds than the pit has room for.
 *
 * @example drawPitPlan(pit, finds).places[0]
 */
export function drawPitPlan(pit: PitToDraw, finds: readonly FindToDraw[]): PitPlan {
  const chance = derive(stream('drawing'), `plan-${pit.id}`);
  const hand = handOf(chance);
  const widthMm = pit.lengthMm + 2 * PLAN_MARGIN_MM;
  const heightMm = pit.widthMm + 2 * PLAN_MARGIN_MM + PLAN_FOOT_MM;
  const floor: Floor = {
    centre: [widthMm / 2, PLAN_MARGIN_MM + pit.widthMm / 2],
    radiusXMm: (pit.lengthMm / 2) * (1 - slopePart(pit) * 0.5),
    radiusYMm: (pit.widthMm / 2) * (1 - slopePart(pit) * 0.5),
  };
  const things = finds.map((find) => {
    const { viewBox } = drawFind(find, { view: 'lying', detail: 'small' });
    return { id: find.id, widthMm: viewBox.width, heightMm: viewBox.height };
  });
  const marks = ground(pit, hand);
  const px = widthMm / NARROW_PX;
  const { laid, tagSideMm } = layOut(things, floor, TAG_PX * px, PRESS_PX * px, derive(chance, 'lay'));
  const taken = laid.flatMap(({ corners, tag }) => [corners, triangleOf(tag, tagSideMm)]);
  marks.push(...litter(pit, taken, handOf(derive(chance, 'litter'))));
  const round = (value: number): number => Math.round(value * 100) / 100;
  return {
    widthMm,
    heightMm,
    markup: inked(markup(marks) + north(widthMm) + planScale(heightMm)),
    places: finds
      .flatMap((find) => laid.filter(({ id }) => id === find.id))
      .map(({ id, at, turnDegrees, enlarged, tag }) => ({
        id,
        xMm: round(at[0]),
        yMm: round(at[1]),
        turnDegrees,
        enlarged: round(enlarged),
        tag: { xMm: round(tag[0]), yMm: round(tag[1]) },
      })),
    tagSideMm: round(tagSideMm),
  };
}

/** An arrow in the corner the round pit leaves free; up is grid north. */
function north(widthMm: number): string {
  const x = widthMm - PLAN_MARGIN_MM - 18;
  const size = widthMm * 0.034;
  const top = PLAN_MARGIN_MM * 0.5 + size;
  const length = widthMm * 0.085;
  const marks: Mark[] = [
    {
      ink: 'line',
      path: linePath([
        [x, top + length],
        [x, top],
      ]),
      part: 'north',
    },
    {
      ink: 'fill',
      path: linePath(
        [
          [x, top],
          [x - length * 0.14, top + length * 0.36],
          [x, top + length * 0.27],
        ],
        true,
      ),
      part: 'north',
    },
    {
      ink: 'ridge',
      path: linePath([
        [x, top],
        [x + length * 0.14, top + length * 0.36],
        [x, top + length * 0.27],
      ]),
      part: 'north',
    },
  ];
  return markup(marks) + inkText('N', x, top - size * 0.15, size, 'middle');
}

function planScale(heightMm: number): string {
  const [x, y] = [PLAN_MARGIN_MM, heightMm - 44];
  const part = (from: number, to: number): Point[] => [
    [x + from, y - 5],
    [x + to, y - 5],
    [x + to, y + 5],
    [x + from, y + 5],
  ];
  const marks: Mark[] = [
    { ink: 'fill', path: linePath(part(0, 100), true) + linePath(part(200, 300), true), part: 'scale-bar' },
    { ink: 'bar', path: linePath(part(0, 500), true), part: 'scale-bar' },
  ];
  return (
    markup(marks) + inkText('0', x, y + 38, 30, 'start') + inkText('50 cm', x + 500, y + 38, 30, 'middle')
  );
}
