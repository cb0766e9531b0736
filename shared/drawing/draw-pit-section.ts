import { derive, stream } from '../chance/index.ts';
import { openCurve } from './curve.ts';
import type { Drawing, FillToDraw, PitToCut } from './drawing.ts';
import { handOf, type Hand } from './hand.ts';
import { inked, inkText, markup, type Mark } from './mark.ts';
import { lump } from './outline.ts';
import { circlePath, dotPath, linePath } from './path.ts';
import { away, type Point } from './point.ts';

/** How far the middle of a fill's foot hangs below its sides, as a part of its thickness. */
const SAG = 0.15;

/**
 * A pit cut through the middle: fills one over another with their numbers, the cut, and the level of the top.
 * The drawing faces the cut; its scale is in words and as a bar.
 */
export function drawPitSection(pit: PitToCut): Drawing {
  const hand = handOf(derive(stream('drawing'), `section-${pit.id}`));
  const floor = (x: number): number => floorAt(pit, x);
  const size = pit.lengthMm * 0.036;
  const marks: Mark[] = [];
  let words = '';
  let from = 0;
  for (const [index, fill] of pit.fills.entries()) {
    const to = from + fill.thicknessMm;
    const above = layerFoot(from, index === 0 ? 0 : fill.thicknessMm);
    const isLast = index === pit.fills.length - 1;
    const below = isLast ? (): number => pit.depthMm : layerFoot(to, fill.thicknessMm);
    const isIn = ([x, y]: Point): boolean =>
      y > above(x / pit.lengthMm) + 6 && y < Math.min(below(x / pit.lengthMm), floor(x)) - 6;
    const label: Point = [pit.lengthMm / 2, (above(0.5) + Math.min(below(0.5), pit.depthMm)) / 2];
    const isClear = (place: Point): boolean =>
      isIn(place) && Math.hypot(place[0] - label[0], place[1] - label[1]) > size * 1.7;
    if (!isLast) marks.push({ ink: 'ridge', path: boundary(pit, below, floor), part: 'fill-boundary' });
    marks.push(...texture(fill, pit, [from - fill.thicknessMm * SAG, to], isClear, hand));
    marks.push({ ink: 'open', path: circlePath(label, size * 1.45, size * 0.95), part: 'context' });
    words += inkText(String(fill.context), label[0], label[1] + size * 0.36, size, 'middle');
    from = to;
  }
  const cut = cutLine(pit, hand);
  marks.push({ ink: 'line', path: cut, part: 'cut' });
  marks.push({
    ink: 'line',
    path:
      linePath([
        [-110, 0],
        [0, 0],
      ]) +
      linePath([
        [pit.lengthMm, 0],
        [pit.lengthMm + 110, 0],
      ]),
    part: 'surface',
  });
  words += notes(pit, size, marks);
  return {
    markup: inked(markup(marks) + words),
    viewBox: {
      x: round(-130),
      y: round(-size * 3.4),
      width: round(pit.lengthMm + 170 + size * 3.4),
      height: round(pit.depthMm + size * 5.2 + 60),
    },
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;

/** Depth of the cut, mm, at a distance from the left edge. */
function floorAt(pit: PitToCut, x: number): number {
  const across = Math.min(1, Math.max(-1, (x / pit.lengthMm) * 2 - 1));
  const shape =
    pit.profile === 'bowl' ? Math.cos((across * Math.PI) / 2) ** 0.8 : (1 - Math.abs(across) ** 4) ** 0.5;
  return pit.depthMm * shape;
}

/** The foot of a layer across the pit: lowest in the middle, where its depth is the recorded one. */
const layerFoot =
  (depthMm: number, thicknessMm: number) =>
  (part: number): number =>
    depthMm - thicknessMm * SAG * (part * 2 - 1) ** 2 * (depthMm === 0 ? 0 : 1);

/** A fill's foot from one side of the cut to the other. */
function boundary(pit: PitToCut, foot: (part: number) => number, floor: (x: number) => number): string {
  const steps = 400;
  const inside: number[] = [];
  for (let step = 0; step <= steps; step += 1) {
    if (foot(step / steps) < floor((pit.lengthMm * step) / steps)) inside.push(step / steps);
  }
  const [first, last] = [inside[0], inside.at(-1)];
  if (first === undefined || last === undefined) return '';
  const points: Point[] = [];
  for (let step = 0; step <= 8; step += 1) {
    const part = first + ((last - first) * step) / 8;
    points.push([part * pit.lengthMm, foot(part)]);
  }
  return openCurve(points).path;
}

function cutLine(pit: PitToCut, hand: Hand): string {
  const points: Point[] = [];
  const steps = 28;
  for (let step = 0; step <= steps; step += 1) {
    // Closer steps at the ends, where the side is steep.
    const x = (pit.lengthMm * (1 - Math.cos((Math.PI * step) / steps))) / 2;
    const isEnd = step === 0 || step === steps;
    points.push([x, floorAt(pit, x) - (isEnd ? 0 : hand.within(0, pit.depthMm * 0.012))]);
  }
  return openCurve(points).path;
}

/** What a fill's description says it holds, as signs; silt alone stays open. */
function texture(
  fill: FillToDraw,
  pit: PitToCut,
  [top, foot]: readonly [number, number],
  isClear: (place: Point) => boolean,
  hand: Hand,
): Mark[] {
  const says = (word: string): boolean => fill.description.includes(word);
  const spot = (): Point => [Math.round(hand.within(0, pit.lengthMm)), Math.round(hand.within(top, foot))];
  const marks: Mark[] = [];
  const scatter = (count: number, draw: (at: Point) => Mark): void => {
    for (let index = 0; index < count; index += 1) {
      const at = spot();
      if (isClear(at)) marks.push(draw(at));
    }
  };
  if (says('sand')) scatter(56, (at) => ({ ink: 'stipple', path: dotPath(at), part: 'sand' }));
  if (says('gravel')) scatter(24, (at) => pebble(at, hand.within(10, 34), hand));
  else scatter(5, (at) => pebble(at, hand.within(9, 22), hand));
  if (says('charcoal'))
    scatter(says('black') ? 80 : 36, (at) => ({ ink: 'fill', path: fleck(at, hand), part: 'charcoal' }));
  if (says('organic'))
    scatter(34, (at) => ({
      ink: 'retouch',
      path: linePath([at, [at[0] + hand.within(14, 34), at[1] + hand.wobble(2)]]),
      part: 'organic',
    }));
  return marks.sort((a, b) => a.ink.localeCompare(b.ink, 'en'));
}

const pebble = (at: Point, size: number, hand: Hand): Mark => ({
  ink: 'stone',
  path: lump(size, size * hand.within(0.6, 0.9), hand, 2.3, 0.05, 5, ([x, y]) => [
    x + at[0] - size / 2,
    y + at[1] - size / 2,
  ]).path,
  part: 'stones',
});

function fleck(at: Point, hand: Hand): string {
  const [turn, size] = [hand.within(0, 6), hand.within(3, 7)];
  const corners = [away(at, turn, size), away(at, turn + 1.8, size * 0.6), away(at, turn + 3.5, size * 0.9)];
  return linePath(
    corners.map(([x, y]): Point => [Math.round(x * 2) / 2, Math.round(y * 2) / 2]),
    true,
  );
}

/** Datum, cut number and scale. */
function notes(pit: PitToCut, size: number, marks: Mark[]): string {
  const datumY = -size * 1.6;
  const foot = pit.depthMm + 46;
  const half = size * 0.42;
  marks.push(
    {
      ink: 'dash',
      path: linePath([
        [-110, datumY],
        [pit.lengthMm + 110, datumY],
      ]),
      part: 'datum',
    },
    {
      ink: 'fill',
      path: linePath(
        [
          [-110 + half, datumY],
          [-110, datumY - half * 1.7],
          [-110 + half * 2, datumY - half * 1.7],
        ],
        true,
      ),
      part: 'datum',
    },
    {
      ink: 'fill',
      path:
        linePath(
          [
            [0, foot - 5],
            [100, foot - 5],
            [100, foot + 5],
            [0, foot + 5],
          ],
          true,
        ) +
        linePath(
          [
            [200, foot - 5],
            [300, foot - 5],
            [300, foot + 5],
            [200, foot + 5],
          ],
          true,
        ),
      part: 'scale-bar',
    },
    {
      ink: 'bar',
      path: linePath(
        [
          [0, foot - 5],
          [500, foot - 5],
          [500, foot + 5],
          [0, foot + 5],
        ],
        true,
      ),
      part: 'scale-bar',
    },
  );
  const side: Point = [pit.lengthMm * 0.9, floorAt(pit, pit.lengthMm * 0.9)];
  const note: Point = [pit.lengthMm + 20, pit.depthMm * 0.8];
  marks.push({
    ink: 'hatch',
    path: linePath([side, [note[0] - size * 0.3, note[1] - size * 0.3]]),
    part: 'leader',
  });
  return (
    inkText(`${pit.topLevelMOd.toFixed(2)} m OD`, -110 + half * 3, datumY - size * 0.35, size, 'start') +
    inkText(`[${pit.cut}]`, note[0], note[1], size, 'start') +
    inkText('0', 0, foot + size * 1.4, size * 0.9, 'middle') +
    inkText('50 cm', 500, foot + size * 1.4, size * 0.9, 'middle')
  );
}
