import { expect, test } from 'vitest';
import { sitesInOrder } from '../../src/bench/sites-in-order.ts';

const offered = (...ids: readonly string[]) => ids.map((id) => ({ value: id, means: id.toUpperCase() }));
const file = (path: string) => ({ path, file: path, text: '' });

test('a site whose finds have just been taken is the one to draft from, though nobody has read it yet', () => {
  const own = [file('sites/gravel-end.yaml'), file('sites/gravel-end.finds.csv')];
  expect(sitesInOrder(offered('wendle-marsh'), own).at(-1)?.value).toBe('gravel-end');
});

test('once it has been read it stands last, by its own name, and once', () => {
  const own = [file('sites/gravel-end.yaml')];
  expect(sitesInOrder(offered('gravel-end', 'wendle-marsh'), own)).toEqual(
    offered('wendle-marsh', 'gravel-end'),
  );
});
