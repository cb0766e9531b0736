import type { Mark } from './mark.ts';
import { linePath } from './path.ts';
import { around, type Point } from './point.ts';
import type { Region } from './region.ts';

/** How thick the line grows where an edge turns right away from the light, as a part of the thing's size. */
const SWELL = 0.0085;
/** How far an edge must be turned away before its line grows. */
const TURNED = 0.2;

/**
 * A second, swelling line inside the edges that face away from a light at the upper left, as an inked drawing
 * has. It stays within the outline, so that the drawn size is the recorded one.
 */
export function shadeEdge(outline: Region, sizeMm: number): Mark {
  // Fine enough that straight pieces stay under the outline's own line; knots stand at every eighth point.
  const every = outline.length > 110 ? 4 : outline.length > 60 ? 2 : 1;
  const coarse = outline.filter((_, index) => index % every === 0);
  const out = outward(coarse);
  const away = out.map(([x, y]) => (x + y) * Math.SQRT1_2);
  const from = away.findIndex((turn, index) => turn <= TURNED && around(away, index + 1) > TURNED);
  let path = '';
  let run: [Point, Point][] = [];
  for (let step = 0; step <= coarse.length; step += 1) {
    const turn = around(away, from + step);
    if (turn > TURNED) {
      const [x, y] = around(coarse, from + step);
      const [outX, outY] = around(out, from + step);
      const swell = (sizeMm * SWELL * (turn - TURNED)) / (1 - TURNED);
      run.push([
        [x, y],
        [x - outX * swell, y - outY * swell],
      ]);
    } else {
      if (run.length > 2) path += sliver(run);
      run = [];
    }
  }
  return { ink: 'fill', path, part: 'shade' };
}

const sliver = (run: readonly (readonly [Point, Point])[]): string =>
  linePath([...run.map(([outer]) => outer), ...run.map(([, inner]) => inner).reverse()], true);

/** The direction out of a region at each of its points, as a step of length 1. */
function outward(region: Region): Point[] {
  const way = isClockwise(region) ? 1 : -1;
  return region.map((_, index) => {
    const [before, after] = [around(region, index - 1), around(region, index + 1)];
    const [x, y] = [after[1] - before[1], before[0] - after[0]];
    const long = Math.hypot(x, y) || 1;
    return [(way * x) / long, (way * y) / long];
  });
}

function isClockwise(region: Region): boolean {
  let twice = 0;
  let before = around(region, -1);
  for (const point of region) {
    twice += before[0] * point[1] - point[0] * before[1];
    before = point;
  }
  return twice > 0;
}
