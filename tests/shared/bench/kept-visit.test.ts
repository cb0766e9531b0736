import { expect, test } from 'vitest';
import { KEPT_VERSION, readKept } from '../../../shared/bench/index.ts';

const kept = {
  mark: 'pitlore-visit',
  version: KEPT_VERSION,
  id: 'a',
  name: 'a-visit',
  text: '---\n',
  files: [{ path: 'sites/a.yaml', file: 'a.yaml', text: 'id: a' }],
  photos: ['a-p1-1.jpg'],
  taking: { site: 'A', finds: 2, before: [], wrote: [{ path: 'sites/a.yaml', mark: '5 1' }] },
  past: ['x'],
  changed: '2026-11-29T12:00:00.000Z',
};

test('what is written today is read back', () => {
  expect(readKept(kept).visit).toEqual(kept);
});

test('a visit of version 1, which had a text and nothing beside it, opens', () => {
  const { files: _files, photos: _photos, past: _past, taking: _taking, ...first } = kept;
  const rest = { files: [], photos: [], past: [], taking: null };
  expect(readKept({ ...first, version: 1 }).visit).toEqual({ ...kept, ...rest });
});

test('a visit of version 2, which had no photographs, opens', () => {
  const { photos: _photos, taking: _taking, ...second } = kept;
  expect(readKept({ ...second, version: 2 }).visit).toEqual({ ...kept, photos: [], taking: null });
  expect(readKept({ ...second, version: 3 }).visit).toBeNull();
});

test.each([
  { name: 'of no version there was', given: { ...kept, version: 0.5 }, fault: 'unreadable' },
  { name: 'made by a later version', given: { ...kept, version: 99 }, fault: 'later' },
  { name: 'with a text missing', given: { ...kept, text: undefined }, fault: 'unreadable' },
  { name: 'of another program', given: { hello: 1 }, fault: 'unreadable' },
  { name: 'nothing at all', given: null, fault: 'unreadable' },
])('a record $name is told of, never thrown', ({ given, fault }) => {
  expect(readKept(given)).toEqual({ visit: null, fault });
});
