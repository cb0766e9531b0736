import { describe, expect, test } from 'vitest';
import { drawFind, type FindToDraw } from '../../../shared/drawing/index.ts';
import { boxOf, drawnPaths, type Drawn } from './reading.ts';
import { processorMs } from '../../processor-ms.ts';
import { madeFinds, SIZES } from './made-finds.ts';

const finds = madeFinds(2000);
/** Notes that stand beside a thing and are no part of its size. */
const NOTES = new Set(['platform-mark', 'missing', 'section-ticks', 'scale-bar', 'frayed-end']);

const faceOf = (find: FindToDraw): Drawn[] =>
  drawnPaths(drawFind(find).markup).filter((path) => path.view === 'face' && !NOTES.has(path.part));

function measured(find: FindToDraw): [number, number] {
  const paths = faceOf(find);
  const shown =
    find.objectType === 'hazelnut-shells' ? paths.filter(({ part }) => part === 'shell').slice(0, 1) : paths;
  const box = boxOf(shown.flatMap(({ points }) => points));
  return [box.right - box.left, box.bottom - box.top];
}

describe('a drawing measured from its own markup', () => {
  test('2,000 finds of every type are as long and wide as recorded, within 2 %', () => {
    const wrong: string[] = [];
    for (const find of finds) {
      if (find.objectType === 'cordage') continue;
      const [across, down] = measured(find);
      const [wide, high] =
        find.objectType === 'pig-jaw' ? [find.lengthMm, find.widthMm] : [find.widthMm, find.lengthMm];
      const off = Math.max(Math.abs(across / wide - 1), Math.abs(down / high - 1));
      if (off > 0.02)
        wrong.push(`${find.id} ${find.objectType} ${find.state} off by ${(off * 100).toFixed(1)} %`);
    }
    expect(wrong).toEqual([]);
  });

  test('a cord is as long along itself as recorded, within 2 %, and as thick', () => {
    for (const find of finds.filter(({ objectType }) => objectType === 'cordage')) {
      const strands = faceOf(find).filter(({ part }) => part === 'strand');
      let along = 0;
      const thick: number[] = [];
      for (const { points } of strands) {
        const half = points.length / 2;
        const middle = points.slice(0, half).map(([x, y], index): [number, number] => {
          const [otherX, otherY] = points[points.length - 1 - index] ?? [x, y];
          thick.push(Math.hypot(x - otherX, y - otherY));
          return [(x + otherX) / 2, (y + otherY) / 2];
        });
        for (let index = 1; index < middle.length; index += 1) {
          const [a, b] = [middle[index - 1], middle[index]];
          if (a !== undefined && b !== undefined) along += Math.hypot(a[0] - b[0], a[1] - b[1]);
        }
      }
      expect(Math.abs(along / find.lengthMm - 1)).toBeLessThan(0.02);
      expect(Math.abs(Math.max(...thick) / find.widthMm - 1)).toBeLessThan(0.02);
    }
  });

  test('nothing leaves the view box, with every view and the scale', () => {
    const wrong: string[] = [];
    for (const find of finds) {
      const { markup, viewBox } = drawFind(find, { view: 'full', scaleBar: true });
      const box = boxOf(drawnPaths(markup).flatMap(({ points }) => points));
      const isIn =
        box.left >= viewBox.x &&
        box.top >= viewBox.y &&
        box.right <= viewBox.x + viewBox.width &&
        box.bottom <= viewBox.y + viewBox.height;
      if (!isIn) wrong.push(`${find.id} ${find.objectType} ${find.state}`);
    }
    expect(wrong).toEqual([]);
  });

  test('what lies on a face lies within its outline’s box', () => {
    const wrong = new Set<string>();
    for (const find of finds.filter(
      ({ objectType }) => objectType !== 'cordage' && objectType !== 'hazelnut-shells',
    )) {
      const paths = faceOf(find);
      const outline = boxOf(paths.filter(({ part }) => part === 'outline').flatMap(({ points }) => points));
      const all = boxOf(paths.flatMap(({ points }) => points));
      const slack = 0.02 * Math.max(outline.right - outline.left, outline.bottom - outline.top);
      const stray = Math.max(
        outline.left - all.left,
        outline.top - all.top,
        all.right - outline.right,
        all.bottom - outline.bottom,
      );
      if (stray > slack) wrong.add(`${find.objectType} ${find.state}`);
    }
    expect([...wrong]).toEqual([]);
  });
});

describe('the same find always looks like itself', () => {
  test('a find drawn twice gives the same bytes; two flakes of one size differ', () => {
    for (const find of finds.slice(0, 64)) expect(drawFind(find)).toEqual(drawFind({ ...find }));
    const [flake] = finds;
    if (flake === undefined) throw new Error('no finds');
    expect(drawFind(flake).markup).not.toBe(drawFind({ ...flake, id: 'another' }).markup);
  });

  test('a face is the same alone and among its other views', () => {
    for (const find of finds.slice(0, 64)) {
      const alone = drawnPaths(drawFind(find).markup).filter(({ view }) => view === 'face');
      const among = drawnPaths(drawFind(find, { view: 'full' }).markup).filter(({ view }) => view === 'face');
      expect(among).toEqual(alone);
    }
  });
});

test('a thing as it lies has its face’s size and nothing beside it: no wall, no dot, nothing of what is lost', () => {
  for (const find of finds.slice(0, 128)) {
    const { markup, viewBox } = drawFind(find, { view: 'lying' });
    const paths = drawnPaths(markup);
    expect(new Set(paths.map(({ view }) => view))).toEqual(new Set(['face']));
    expect(paths.filter(({ part }) => part === 'platform-mark' || part === 'missing')).toEqual([]);
    const box = boxOf(paths.flatMap(({ points }) => points));
    // A margin of a twentieth at each side; a cord keeps room for frayed ends, a cluster for broken rims.
    const fray = find.objectType === 'cordage' ? 1.8 * find.widthMm : 0;
    const margins = find.objectType === 'hazelnut-shells' ? 0.2 : 0.12;
    const slack = Math.max(viewBox.width, viewBox.height) * margins + fray;
    expect(viewBox.width - (box.right - box.left), find.objectType).toBeLessThan(slack);
    expect(viewBox.height - (box.bottom - box.top), find.objectType).toBeLessThan(slack);
  }
});

describe('budgets', () => {
  test('no drawing is over 6,000 bytes', () => {
    const heavy: string[] = [];
    for (const find of finds) {
      for (const options of [{ detail: 'small' }, { view: 'full', scaleBar: true }] as const) {
        const bytes = drawFind(find, options).markup.length;
        if (bytes > 6000) heavy.push(`${find.objectType} ${find.state} ${JSON.stringify(options)} ${bytes}`);
      }
    }
    expect(heavy).toEqual([]);
  });

  test('a drawing of any type takes a millisecond and a half of processor at most, once warm', () => {
    for (const find of finds) drawFind(find);
    const slow = SIZES.flatMap(([objectType]) => {
      const ofType = finds.filter((find) => find.objectType === objectType);
      // The processor's clock ticks in steps of some milliseconds: a few hundred drawings at a time. Beside other work they
      // take up to a millisecond (burnt flint), alone a third of that.
      const rounds = Math.ceil(300 / ofType.length);
      const spent = processorMs(() => {
        for (let round = 0; round < rounds; round += 1) for (const find of ofType) drawFind(find);
      });
      const each = spent / (rounds * ofType.length);
      return each > 1.5 ? [`${objectType}: ${each.toFixed(2)} ms`] : [];
    });
    expect(slow).toEqual([]);
  });
});

test('every type with a size range here has a drawing of its own but the last', () => {
  const plain = (objectType: string): number => {
    const find = finds.find((made) => made.objectType === objectType);
    return find === undefined ? 0 : drawnPaths(drawFind(find).markup).length;
  };
  expect(SIZES.filter(([objectType]) => plain(objectType) < 2).map(([objectType]) => objectType)).toEqual([
    'some-new-thing',
  ]);
});
