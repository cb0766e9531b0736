import { boxOf, openCurve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { bowPath, linePath } from '../path.ts';
import { apart, around, away, type Point } from '../point.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';

const LOOP: readonly Point[] = [
  [0, 0.3],
  [0.5, 0.02],
  [1.05, 0.12],
  [1.3, 0.5],
  [0.95, 0.82],
  [0.55, 0.66],
  [0.62, 0.3],
  [1.1, 0.02],
  [1.75, 0.2],
];

/** A cord's middle line in a loose loop; along it the cord is as long as the record says. */
function cordLine(lengthMm: number): Point[] {
  const unit = openCurve(LOOP).points;
  const long = unit.slice(1).reduce((sum, point, index) => sum + apart(point, around(unit, index)), 0);
  return unit.map(([x, y]): Point => [(x / long) * lengthMm, (y / long) * lengthMm]);
}

/** Two strands laid round each other, over and under, with frayed ends. */
export const cordage: Drawer = ({ find, hand, isSmall }) => {
  const half = find.widthMm / 2;
  const fray = find.widthMm * 0.9;
  const line = cordLine(find.lengthMm);
  const box = boxOf(line);
  const at = line.map(([x, y]): Point => [x - box.x + fray, y - box.y + fray]);
  const frays = [0, -1].flatMap((end) =>
    [-0.5, -0.1, 0.4].map((turn) => {
      const angle = (end === 0 ? Math.PI * 0.85 : 0.3) + turn;
      return linePath([around(at, end), away(around(at, end), angle, fray * hand.within(0.6, 0.95))]);
    }),
  );
  const marks: Mark[] = [{ ink: 'retouch', path: frays.join(''), part: 'frayed-end' }];
  // Drawn a third at a time, so that the cord passes over itself where it crosses.
  const size = Math.ceil(at.length / 3);
  for (let from = 0; from < at.length - 1; from += size) {
    marks.push(...cordPiece(at.slice(from, from + size + 1), half, isSmall ? 2.3 : 1.9));
  }
  const [width, height] = [box.width + 2 * fray, box.height + 2 * fray];
  return {
    face: { part: 'face', widthMm: width, heightMm: height, marks },
    more: () => [sectionView('oval', find.widthMm, find.thicknessMm, hand, find)],
  };
};

function cordPiece(part: readonly Point[], half: number, pitch: number): Mark[] {
  const left: Point[] = [];
  const right: Point[] = [];
  let twist = '';
  let walked = half;
  for (const [index, point] of part.entries()) {
    const before = part[index - 1] ?? point;
    const after = part[index + 1] ?? point;
    const along = Math.atan2(after[1] - before[1], after[0] - before[0]);
    left.push(away(point, along - Math.PI / 2, half));
    right.push(away(point, along + Math.PI / 2, half));
    walked += apart(point, before);
    if (walked < half * pitch) continue;
    walked = 0;
    const from = away(away(point, along, -half * 0.6), along + Math.PI / 2, half);
    const to = away(away(point, along, half * 0.6), along - Math.PI / 2, half);
    twist += bowPath(from, [away(point, along - 0.7, half * 0.3), to]);
  }
  return [
    { ink: 'outline', path: linePath([...left, ...right.toReversed()]), part: 'strand' },
    { ink: 'ridge', path: twist, part: 'twist' },
  ];
}
