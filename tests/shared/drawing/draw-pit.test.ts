import { describe, expect, test } from 'vitest';
import {
  drawFind,
  drawPitPlan,
  drawPitSection,
  type FindToDraw,
  type PlanPlace,
} from '../../../shared/drawing/index.ts';
import { boxOf, drawnPaths, pathPoints } from './reading.ts';
import { madeFinds } from './made-finds.ts';
import { PITS } from './pits.ts';

type Corner = readonly [number, number];

/** Convex areas are apart when a line along some side of either parts them. */
function areApart(one: readonly Corner[], two: readonly Corner[]): boolean {
  for (const area of [one, two]) {
    for (const [index, [x, y]] of area.entries()) {
      const [nextX, nextY] = area[(index + 1) % area.length] ?? [0, 0];
      const along = (corner: Corner): number => (corner[0] - x) * (nextY - y) - (corner[1] - y) * (nextX - x);
      const ones = one.map(along);
      const twos = two.map(along);
      if (Math.max(...ones) <= Math.min(...twos) || Math.max(...twos) <= Math.min(...ones)) return true;
    }
  }
  return false;
}

/** The corners of a find's drawn box, where the plan lays it. */
function corners(place: PlanPlace, find: FindToDraw): Corner[] {
  const { viewBox } = drawFind(find, { view: 'lying', detail: 'small' });
  const turn = (place.turnDegrees * Math.PI) / 180;
  const [halfX, halfY] = [(viewBox.width * place.enlarged) / 2, (viewBox.height * place.enlarged) / 2];
  return (
    [
      [-halfX, -halfY],
      [halfX, -halfY],
      [halfX, halfY],
      [-halfX, halfY],
    ] as const
  ).map(([x, y]) => [
    place.xMm + x * Math.cos(turn) - y * Math.sin(turn),
    place.yMm + x * Math.sin(turn) + y * Math.cos(turn),
  ]);
}

const triangle = ({ xMm, yMm }: PlanPlace['tag'], side: number): Corner[] => [
  [xMm, yMm - side / Math.sqrt(3)],
  [xMm + side / 2, yMm + side / (2 * Math.sqrt(3))],
  [xMm - side / 2, yMm + side / (2 * Math.sqrt(3))],
];

const plans = PITS.map(({ pit, finds }) => ({ pit, finds, plan: drawPitPlan(pit, finds) }));

describe('the plan of each of nine pits', () => {
  test.each(plans)('$pit.id shows every find once, none over another', ({ finds, plan }) => {
    expect(plan.places.map(({ id }) => id)).toEqual(finds.map(({ id }) => id));
    const laid = plan.places.map((place, index) => {
      const find = finds[index];
      if (find === undefined) throw new Error('a place without a find');
      return { id: place.id, area: corners(place, find) };
    });
    for (const one of laid)
      for (const two of laid)
        if (one.id < two.id) expect(areApart(one.area, two.area), `${one.id} and ${two.id}`).toBe(true);
  });

  test.each(plans)('$pit.id: no number touches a find or another number', ({ finds, plan }) => {
    const tags = plan.places.map(({ id, tag }) => ({ id, area: triangle(tag, plan.tagSideMm) }));
    for (const one of tags) {
      for (const two of tags)
        if (one.id < two.id) expect(areApart(one.area, two.area), `tags ${one.id}, ${two.id}`).toBe(true);
      for (const [index, place] of plan.places.entries()) {
        const find = finds[index];
        if (find !== undefined)
          expect(areApart(one.area, corners(place, find)), `tag ${one.id}, find ${place.id}`).toBe(true);
      }
    }
  });

  test.each(plans)('$pit.id: on a plan 350 px wide, what is pressed is at least 44 px apart', ({ plan }) => {
    const px = 350 / plan.widthMm;
    for (const one of plan.places) {
      for (const two of plan.places) {
        if (one.id < two.id)
          expect(Math.hypot(one.xMm - two.xMm, one.yMm - two.yMm) * px).toBeGreaterThanOrEqual(44);
      }
    }
  });

  test.each(plans)('$pit.id: a number stands nearer to its own find than to any other', ({ plan }) => {
    for (const place of plan.places) {
      const own = Math.hypot(place.tag.xMm - place.xMm, place.tag.yMm - place.yMm);
      for (const other of plan.places) {
        expect(
          Math.hypot(place.tag.xMm - other.xMm, place.tag.yMm - other.yMm),
          `${place.id} by ${other.id}`,
        ).toBeGreaterThanOrEqual(own);
      }
    }
  });

  test.each(plans)(
    '$pit.id: everything stays on the sheet, no find is drawn under its size, and the same again',
    ({ pit, finds, plan }) => {
      for (const [index, place] of plan.places.entries()) {
        const find = finds[index];
        if (find === undefined) throw new Error('a place without a find');
        expect(place.enlarged).toBeGreaterThanOrEqual(1);
        for (const [x, y] of [...corners(place, find), ...triangle(place.tag, plan.tagSideMm)]) {
          expect(x).toBeGreaterThan(0);
          expect(y).toBeGreaterThan(0);
          expect(x).toBeLessThan(plan.widthMm);
          expect(y).toBeLessThan(plan.heightMm);
        }
      }
      expect(drawPitPlan(pit, finds)).toEqual(plan);
    },
  );

  test.each(plans)('$pit.id: the cut is as long and wide as recorded, within 2 %', ({ pit, plan }) => {
    const edge = drawnPaths(plan.markup).filter(({ part }) => part === 'edge');
    const box = boxOf(edge.flatMap(({ points }) => points));
    expect(Math.abs((box.right - box.left) / pit.lengthMm - 1)).toBeLessThan(0.02);
    expect(Math.abs((box.bottom - box.top) / pit.widthMm - 1)).toBeLessThan(0.02);
  });

  // Convention: hachure heads at the top of the slope (Museum of London Archaeological Site Manual, 3rd ed. 1994; FM).
  test.each(plans)('$pit.id: hachures have their wide heads at the edge, tails downhill', ({ plan }) => {
    const data = /data-part="hachures"[^>]* d="([^"]+)"/.exec(plan.markup)?.[1] ?? '';
    const wedges = data
      .split('M')
      .filter((text) => text !== '')
      .map((text) => pathPoints(`M${text}`));
    expect(wedges.length).toBeGreaterThan(60);
    const box = boxOf(wedges.flat());
    const heart: Corner = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    const out = ([x, y]: Corner): number => Math.hypot(x - heart[0], y - heart[1]);
    for (const [head, tail, otherHead] of wedges) {
      if (head === undefined || tail === undefined || otherHead === undefined)
        throw new Error('a wedge has three corners');
      expect(out(tail)).toBeLessThan(Math.min(out(head), out(otherHead)));
    }
  });

  test.each(plans)('$pit.id carries a north arrow and a scale of 50 cm', ({ plan }) => {
    const parts = new Set(drawnPaths(plan.markup).map(({ part }) => part));
    expect(parts).toContain('north');
    const bar = boxOf(
      drawnPaths(plan.markup)
        .filter(({ part }) => part === 'scale-bar')
        .flatMap(({ points }) => points),
    );
    expect(bar.right - bar.left).toBeCloseTo(500, 1);
    expect(plan.markup).toContain('>50 cm<');
  });
});

describe('pits of other sizes', () => {
  const chosen = madeFinds(200).filter(({ lengthMm }) => lengthMm < 180);
  const pit = { id: 'other', lengthMm: 1000, widthMm: 900, depthMm: 300, profile: 'bowl' } as const;

  test.each([0, 1, 2, 5, 14, 20, 26])(
    '%i finds lie apart in a pit a metre across, with their numbers',
    (count) => {
      const finds = chosen.slice(0, count);
      const plan = drawPitPlan(pit, finds);
      const areas = plan.places.flatMap((place, index) => {
        const find = finds[index];
        return find === undefined ? [] : [corners(place, find), triangle(place.tag, plan.tagSideMm)];
      });
      expect(areas).toHaveLength(count * 2);
      for (const [index, one] of areas.entries()) {
        for (const two of areas.slice(index + 1)) expect(areApart(one, two)).toBe(true);
      }
    },
  );

  test('finds that cannot fit are said not to fit', () => {
    expect(() => drawPitPlan({ ...pit, lengthMm: 150, widthMm: 150 }, chosen.slice(0, 12))).toThrow(
      RangeError,
    );
  });
});

test('no plan is over 14,000 bytes, no section over 8,000', () => {
  expect(Math.max(...plans.map(({ plan }) => plan.markup.length))).toBeLessThan(14_000);
  expect(Math.max(...PITS.map(({ pit }) => drawPitSection(pit).markup.length))).toBeLessThan(8_000);
});

describe('the section of each of nine pits', () => {
  test.each(PITS)('$pit.id: the cut is as long and deep as recorded, within 2 %', ({ pit }) => {
    const paths = drawnPaths(drawPitSection(pit).markup);
    const box = boxOf(paths.filter(({ part }) => part === 'cut').flatMap(({ points }) => points));
    expect(Math.abs((box.right - box.left) / pit.lengthMm - 1)).toBeLessThan(0.02);
    expect(Math.abs((box.bottom - box.top) / pit.depthMm - 1)).toBeLessThan(0.02);
  });

  test.each(PITS)(
    '$pit.id: fills in order with their numbers, the cut in square brackets, the level',
    ({ pit }) => {
      const { markup } = drawPitSection(pit);
      const words = [...markup.matchAll(/>([^<]+)<\/text>/g)].map(([, text]) => text);
      expect(words.slice(0, pit.fills.length)).toEqual(pit.fills.map(({ context }) => String(context)));
      expect(words).toContain(`[${pit.cut}]`);
      expect(words.some((text) => text === `${pit.topLevelMOd.toFixed(2)} m OD`)).toBe(true);
    },
  );

  test.each(PITS)('$pit.id: nothing leaves the sheet, stones and flecks lie inside the cut', ({ pit }) => {
    const { markup, viewBox } = drawPitSection(pit);
    const paths = drawnPaths(markup);
    const box = boxOf(paths.flatMap(({ points }) => points));
    expect(box.left).toBeGreaterThanOrEqual(viewBox.x);
    expect(box.top).toBeGreaterThanOrEqual(viewBox.y);
    expect(box.right).toBeLessThanOrEqual(viewBox.x + viewBox.width);
    expect(box.bottom).toBeLessThanOrEqual(viewBox.y + viewBox.height);
    for (const { part, points } of paths.filter(({ part }) => part === 'stones' || part === 'charcoal')) {
      for (const [x, y] of points) {
        expect(x, part).toBeGreaterThan(0);
        expect(x, part).toBeLessThan(pit.lengthMm);
        expect(y, part).toBeGreaterThan(-10);
        expect(y, part).toBeLessThan(pit.depthMm + 10);
      }
    }
  });
});
