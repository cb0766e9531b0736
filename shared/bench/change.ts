import type { Path } from '../lesson/problem.ts';

/** A change that a form makes to a head or a block. Paths are as in problems: `['trays', 0, 'name']`. */
export type Change =
  | { readonly do: 'set'; readonly path: Path; readonly value: unknown }
  | { readonly do: 'remove'; readonly path: Path }
  /** `path` is the list's. */
  | { readonly do: 'insert'; readonly path: Path; readonly at: number; readonly value: unknown }
  | { readonly do: 'move'; readonly path: Path; readonly from: number; readonly to: number };

type Mapping = Readonly<Record<string, unknown>>;

const isMapping = (value: unknown): value is Mapping =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Data with the value at a path made anew; undefined takes it out. */
function at(data: unknown, path: Path, make: (value: unknown) => unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return make(data);
  if (Array.isArray(data)) {
    const index = Number(step);
    const value = at(data[index], rest, make);
    const list: readonly unknown[] = data;
    return value === undefined
      ? list.filter((_, place) => place !== index)
      : [...list.slice(0, index), value, ...list.slice(index + 1)];
  }
  const map: Mapping = isMapping(data) ? data : {};
  const key = String(step);
  const value = at(map[key], rest, make);
  if (value === undefined) return Object.fromEntries(Object.entries(map).filter(([name]) => name !== key));
  return { ...map, [key]: value };
}

const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/**
 * What a change makes of plain data: what the text must say afterwards.
 *
 * @example changeData({ a: 1 }, { do: 'set', path: ['a'], value: 2 }) // { a: 2 }
 */
export function changeData(data: unknown, change: Change): unknown {
  switch (change.do) {
    case 'set':
      return at(data, change.path, () => change.value);
    case 'remove':
      return at(data, change.path, () => undefined);
    case 'insert':
      return at(data, change.path, (value) => asList(value).toSpliced(change.at, 0, change.value));
    case 'move':
      return at(data, change.path, (value) => {
        const list = asList(value);
        return list.toSpliced(change.from, 1).toSpliced(change.to, 0, list[change.from]);
      });
    default:
      return change satisfies never;
  }
}

/** True where two values of plain data are the same, the order of keys too. */
export const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
