/** Reads drawn markup back, by its own reader of path data, so that a drawing is measured from what it says. */

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

const NUMBER = /-?(?:\d+\.?\d*|\.\d+)/g;

/** The points of a path, curves cut into 12 steps; `M`, `h`, `l`, `c`, `q`, `z` only. */
export function pathPoints(data: string): [number, number][] {
  const points: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [, letter = '', rest = ''] of data.matchAll(/([MhlcqzZ])([^MhlcqzZ]*)/g)) {
    const values = [...rest.matchAll(NUMBER)].map(([text]) => Number(text));
    const take = { M: 2, h: 1, l: 2, c: 6, q: 4, z: 0, Z: 0 }[letter];
    if (take === undefined) throw new Error(`unread command ${letter}`);
    if (take > 0 && values.length % take !== 0)
      throw new Error(`wrong count of numbers after ${letter}: ${rest}`);
    for (let index = 0; index < values.length; index += take) {
      const group = values.slice(index, index + take);
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = group;
      if (letter === 'M') [x, y] = [a, b];
      if (letter === 'h') x += a;
      if (letter === 'l') [x, y] = [x + a, y + b];
      if (letter === 'c') {
        for (let step = 1; step < 12; step += 1) {
          const t = step / 12;
          const u = 1 - t;
          points.push([
            x + 3 * u * u * t * a + 3 * u * t * t * c + t ** 3 * e,
            y + 3 * u * u * t * b + 3 * u * t * t * d + t ** 3 * f,
          ]);
        }
        [x, y] = [x + e, y + f];
      }
      if (letter === 'q') {
        for (let step = 1; step < 12; step += 1) {
          const t = step / 12;
          const u = 1 - t;
          points.push([x + 2 * u * t * a + t * t * c, y + 2 * u * t * b + t * t * d]);
        }
        [x, y] = [x + c, y + d];
      }
      points.push([x, y]);
    }
  }
  return points;
}

export function boxOf(points: readonly (readonly [number, number])[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

export interface Drawn {
  /** The value of `class`. */
  readonly ink: string;
  /** The value of `data-part`, or nothing. */
  readonly part: string;
  /** The view it stands in. */
  readonly view: string;
  /** Points in the drawing's own mm, the view's shift included. */
  readonly points: [number, number][];
}

/** Every path of a markup, with the view it belongs to. Views are groups moved by `translate` alone. */
export function drawnPaths(markup: string): Drawn[] {
  const result: Drawn[] = [];
  const groups: { view: string; x: number; y: number }[] = [{ view: '', x: 0, y: 0 }];
  for (const [tag] of markup.matchAll(/<[^>]+>/g)) {
    const outer = groups.at(-1) ?? { view: '', x: 0, y: 0 };
    if (tag.startsWith('</g')) groups.pop();
    else if (tag.startsWith('<g')) {
      const move = /translate\((-?[\d.]+) (-?[\d.]+)\)/.exec(tag);
      const part = /data-part="([^"]+)"/.exec(tag)?.[1] ?? outer.view;
      groups.push({ view: part, x: outer.x + Number(move?.[1] ?? 0), y: outer.y + Number(move?.[2] ?? 0) });
    } else if (tag.startsWith('<path')) {
      const data = / d="([^"]*)"/.exec(tag)?.[1] ?? '';
      result.push({
        ink: /class="([^"]+)"/.exec(tag)?.[1] ?? '',
        part: /data-part="([^"]+)"/.exec(tag)?.[1] ?? '',
        view: outer.view,
        points: pathPoints(data).map(([x, y]): [number, number] => [x + outer.x, y + outer.y]),
      });
    }
  }
  return result;
}
