import { describe, expect, test } from 'vitest';
import { drawFind, type FindToDraw } from '../../../shared/drawing/index.ts';
import { boxOf, drawnPaths, pathPoints, type Drawn } from './reading.ts';

const make = (
  objectType: string,
  lengthMm: number,
  widthMm: number,
  thicknessMm: number,
  more: Partial<FindToDraw> = {},
): FindToDraw => ({
  id: `checked-${objectType}`,
  objectType,
  material: 'flint',
  state: 'whole',
  lengthMm,
  widthMm,
  thicknessMm,
  count: 1,
  ...more,
});

const paths = (find: FindToDraw): Drawn[] =>
  drawnPaths(drawFind(find, { view: 'full', scaleBar: true }).markup);
const outline = (find: FindToDraw): [number, number][] =>
  paths(find)
    .filter(({ view, part }) => view === 'face' && part === 'outline')
    .flatMap(({ points }) => points);

/** The width of an outline at a height, 0 the top and 1 the foot. */
function widthAt(find: FindToDraw, part: number): number {
  const points = outline(find);
  const y = find.lengthMm * part;
  const xs: number[] = [];
  for (const [index, [x, py]] of points.entries()) {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, py];
    if ((py - y) * (nextY - y) <= 0 && py !== nextY) xs.push(x + ((nextX - x) * (y - py)) / (nextY - py));
  }
  return Math.max(...xs) - Math.min(...xs);
}

describe('orientation: Martingell & Saville 1988; Inizan et al. 1999 (both FM)', () => {
  test.each(['flake', 'blade', 'end-scraper', 'serrated-flake'])(
    '%s: struck end at the foot, marked by a dot below it',
    (objectType) => {
      const find = make(objectType, 52, 24, 8);
      const dot = paths(find)
        .filter(({ part }) => part === 'platform-mark')
        .flatMap(({ points }) => points);
      expect(Math.min(...dot.map(([, y]) => y))).toBeGreaterThan(find.lengthMm);
      // The platform is a short straight run on the foot.
      expect(widthAt(find, 0.985)).toBeLessThan(0.75 * find.widthMm);
    },
  );

  test('scraper: the retouched end is up', () => {
    const find = make('end-scraper', 46, 37, 12);
    const chips = paths(find)
      .filter(({ part }) => part === 'retouch')
      .flatMap(({ points }) => points);
    expect(chips.length).toBeGreaterThan(0);
    expect(Math.max(...chips.map(([, y]) => y))).toBeLessThan(find.lengthMm * 0.6);
  });

  test.each(['leaf-arrowhead', 'oblique-arrowhead'])('%s: the point is up', (objectType) => {
    const find = make(objectType, 40, 20, 4);
    expect(widthAt(find, 0.02)).toBeLessThan(0.12 * find.widthMm);
  });

  test.each(['polished-axe', 'axe-roughout'])(
    '%s: cutting edge down, butt up (our choice, ASM)',
    (objectType) => {
      const find = make(objectType, 150, 62, 33);
      expect(widthAt(find, 0.85)).toBeGreaterThan(widthAt(find, 0.15) * 1.15);
    },
  );

  test('a jaw keeps its side: the left one faces left, and the right one is its mirror', () => {
    const teeth = (side: 'left' | 'right'): number => {
      const find = make('pig-jaw', 118, 49, 24, { side });
      const box = boxOf(
        paths(find)
          .filter(({ part, view }) => view === 'face' && part === 'teeth')
          .flatMap(({ points }) => points),
      );
      return (box.left + box.right) / 2 / find.lengthMm;
    };
    expect(teeth('left')).toBeLessThan(0.5);
    expect(teeth('right')).toBeCloseTo(1 - teeth('left'), 2);
  });
});

describe('light from the upper left: Green, Illustrating Lithics', () => {
  const ripplesOf = (find: FindToDraw): Drawn[] =>
    paths(find).filter(({ ink, view }) => ink === 'ink-ripple' && view === 'face');

  test('a flake has more ink of ripples on its right half than on its left', () => {
    let [left, right] = [0, 0];
    for (let index = 0; index < 60; index += 1) {
      const find = make('flake', 55, 42, 9, { id: `lit-${index}` });
      for (const { points } of ripplesOf(find)) {
        for (const [x] of points)
          if (x < find.widthMm / 2) left += 1;
          else right += 1;
      }
    }
    expect(right).toBeGreaterThan(left * 1.3);
  });

  test.each(['hammerstone', 'polished-axe', 'natural-pebble'])(
    '%s: its shading lies on the right',
    (objectType) => {
      const find = make(objectType, 90, 60, 30);
      const shade = paths(find).filter(
        ({ ink, part, view }) =>
          view === 'face' &&
          (ink === 'ink-stipple' ||
            (objectType === 'natural-pebble' && part === '' && ink === 'ink-scratch')),
      );
      const xs = shade.flatMap(({ points }) => points).map(([x]) => x);
      expect(xs.length).toBeGreaterThan(4);
      expect(xs.reduce((sum, x) => sum + x, 0) / xs.length).toBeGreaterThan(find.widthMm * 0.6);
    },
  );
});

describe('ripples are hollow toward the blow (all manuals, FM)', () => {
  test('on a core every ripple bows away from the platform at the top', () => {
    const { markup } = drawFind(make('core', 64, 55, 43));
    const data = /class="ink-ripple" fill[^>]* d="([^"]+)"/g;
    let [bowed, all] = [0, 0];
    const groups = [...markup.matchAll(data)].map(([, text = '']) => text);
    for (const arc of groups
      .slice(-1)
      .join('')
      .split('M')
      .filter((text) => text !== '')) {
      const points = pathPoints(`M${arc}`).slice(0, 12);
      const [first, middle, last] = [points[0], points[6], points.at(-1)];
      if (first === undefined || middle === undefined || last === undefined) continue;
      all += 1;
      if (middle[1] >= (first[1] + last[1]) / 2) bowed += 1;
    }
    expect(all).toBeGreaterThan(8);
    expect(bowed).toBe(all);
  });
});

describe('views and sections (Addington 1986, Inizan et al. 1999, FM; views turned as if rolled, CP)', () => {
  test.each([
    ['flake', 52, 38, 9],
    ['blade', 68, 19, 6],
    ['polished-axe', 150, 62, 33],
    ['leaf-arrowhead', 39, 18, 4],
  ])(
    '%s: edge view at the right, level with the face, as wide as the thing is thick',
    (objectType, length, width, thickness) => {
      const find = make(objectType, length, width, thickness);
      const edge = boxOf(
        paths(find)
          .filter(({ view }) => view === 'edge')
          .flatMap(({ points }) => points),
      );
      expect(edge.left).toBeGreaterThan(width);
      expect(edge.top).toBeCloseTo(0, 1);
      expect(edge.bottom).toBeCloseTo(length, 1);
      expect(edge.right - edge.left).toBeCloseTo(thickness, 1);
    },
  );

  test.each(['flake', 'blade', 'polished-axe', 'hammerstone', 'core', 'bone-pin'])(
    '%s: a section below, hatched at 45 degrees, cut marked by two ticks',
    (objectType) => {
      const find = make(objectType, 70, 28, 12);
      const section = paths(find).filter(({ view }) => view === 'section');
      const box = boxOf(section.flatMap(({ points }) => points));
      expect(box.top).toBeGreaterThan(find.lengthMm);
      const { markup } = drawFind(find, { view: 'full' });
      const lines = [...markup.matchAll(/class="ink-hatch" stroke[^>]* d="([^"]+)"/g)].map(
        ([, data = '']) => data,
      );
      const hatch = lines
        .join('')
        .split('M')
        .filter((text) => text !== '')
        .map((text) => pathPoints(`M${text}`));
      const slopes = hatch.map(([from, to]) =>
        from === undefined || to === undefined ? 0 : (to[1] - from[1]) / (to[0] - from[0]),
      );
      expect(slopes.length).toBeGreaterThan(1);
      for (const slope of slopes) expect(slope).toBeCloseTo(-1, 0);
      expect(markup).toContain('data-part="section-ticks"');
    },
  );

  test('a sherd has its wall at the left, outside to the right: Orton, Tyers & Vince, Pottery in Archaeology, p. 91; NAS Guide, p. 175', () => {
    const find = make('grooved-ware-sherd', 83, 66, 12, { decoration: 'cordon' });
    const wall = paths(find).filter(({ view }) => view === 'section');
    expect(boxOf(wall.flatMap(({ points }) => points)).right).toBeLessThan(0);
    expect(wall.some(({ ink }) => ink === 'ink-hatch')).toBe(true);
  });

  test.each([
    [12, 9, 'mm'],
    [52, 38, 'mm'],
    [412, 96, 'cm'],
  ])('a thing %i mm long has a scale bar as long as its words say', (length, width, unit) => {
    const find = make('natural-pebble', length, width, width * 0.7);
    const bar = boxOf(
      paths(find)
        .filter(({ part }) => part === 'scale-bar')
        .flatMap(({ points }) => points),
    );
    const words = />(\d+) (mm|cm)</.exec(drawFind(find, { scaleBar: true, view: 'full' }).markup);
    const said = Number(words?.[1]) * (words?.[2] === 'cm' ? 10 : 1);
    expect(words?.[2]).toBe(unit);
    expect(bar.right - bar.left).toBeCloseTo(said, 1);
  });
});

describe('signs of material (FM unless said)', () => {
  test('a pebble nobody used has no pecks, scars, dots; a hammerstone has pecks at both ends only', () => {
    const parts = new Set(
      paths(make('natural-pebble', 61, 43, 30))
        .filter(({ view }) => view === 'face')
        .map(({ ink }) => ink),
    );
    expect([...parts].sort()).toEqual(['ink-fill', 'ink-outline', 'ink-scratch']);
    const find = make('hammerstone', 80, 70, 50);
    const pecks = paths(find)
      .filter(({ part }) => part === 'pecked')
      .flatMap(({ points }) => points);
    expect(pecks.filter(([, y]) => y > 0.3 * 80 && y < 0.7 * 80)).toEqual([]);
    expect(pecks.filter(([, y]) => y < 40).length).toBeGreaterThan(20);
    expect(pecks.filter(([, y]) => y > 40).length).toBeGreaterThan(20);
  });

  test('the line swells on the side away from the light, and only there', () => {
    const find = make('natural-pebble', 80, 60, 40);
    const swell = paths(find)
      .filter(({ part }) => part === 'shade')
      .flatMap(({ points }) => points);
    expect(swell.length).toBeGreaterThan(6);
    expect(swell.filter(([x, y]) => x / 60 + y / 80 < 0.75)).toEqual([]);
  });

  test('a ground axe has no ripples; a roughout has them all over', () => {
    expect(paths(make('polished-axe', 150, 62, 33)).filter(({ ink }) => ink === 'ink-ripple')).toEqual([]);
    expect(paths(make('axe-roughout', 150, 62, 33)).some(({ ink }) => ink === 'ink-ripple')).toBe(true);
  });

  test('what is lost of a broken axe is dashed', () => {
    expect(
      paths(make('polished-axe', 104, 58, 34, { state: 'broken' })).some(
        ({ ink, part }) => ink === 'ink-dash' && part === 'missing',
      ),
    ).toBe(true);
  });
});
