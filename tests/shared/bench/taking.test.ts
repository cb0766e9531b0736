import { expect, test } from 'vitest';
import { takeBack, takeIn } from '../../../shared/bench/index.ts';
import type { ContentFile } from '../../../shared/library/index.ts';

const file = (path: string, text: string): ContentFile => ({ path, file: path, text });
const own = [file('sites/a.yaml', 'id: a'), file('sites/b.yaml', 'id: b')];
const taken = [file('sites/b.yaml', 'id: b # more'), file('sites/b.finds.csv', 'pit')];
const told = { site: 'B', finds: 3 };

test('a taking lies over one’s own files, and one press takes it back', () => {
  const { files, taking } = takeIn(own, taken, told);
  expect(files).toEqual([own[0], ...taken]);
  expect(taking).toMatchObject({ site: 'B', finds: 3, before: [own[1]] });
  expect(takeBack(files, taking)).toEqual(own);
});

test('what was put in since stays; what was changed since is not lost', () => {
  const { files, taking } = takeIn(own, taken, told);
  const other = file('sites/c.yaml', 'id: c');
  expect(takeBack([...files, other], taking)).toEqual([own[0], other, own[1]]);
  const changed = files.map((each) =>
    each.path === 'sites/b.yaml' ? { ...each, text: 'id: b # MORE' } : each,
  );
  expect(takeBack(changed, taking)).toBeNull();
  expect(takeBack(own, taking)).toBeNull();
});
