import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { DayEdit } from '../../../shared/day/index.ts';
import { editDay, readDay } from '../../../shared/library/index.ts';

const files = ['class-morning', 'open-day'].map((id) => ({
  id,
  text: readFileSync(`content/days/${id}.yaml`, 'utf8'),
}));
const text = files[0]?.text ?? '';
const comments = (of: string): readonly string[] => of.match(/#.*/g) ?? [];

describe.each(files)('$id', ({ text }) => {
  test('one value written over another moves no other line', () => {
    const edits: readonly DayEdit[] = [
      { path: ['stations', 'pots', 'pupils'], value: 9 },
      { path: ['slots', 0, 'to'], value: '10:00' },
      { path: ['title'], value: 'Ours: "a day" # not a comment' },
    ];
    const changed = editDay(text, edits);
    const before = text.split('\n');
    const after = changed.split('\n');
    expect(after.length).toBe(before.length);
    expect(after.filter((line, index) => line !== before[index]).length).toBeLessThanOrEqual(3);
    expect(readDay('a.yaml', changed).value).toMatchObject({ title: 'Ours: "a day" # not a comment' });
  });

  test('something added or taken away leaves every comment and all else that was said', () => {
    const said = readDay('a.yaml', text).value;
    const added = editDay(text, [
      { path: ['adults', 'more-1'], value: { role: 'One more', skills: ['pit'] } },
    ]);
    expect(comments(added)).toEqual(comments(text));
    const read = readDay('a.yaml', added);
    expect(read.problems).toEqual([]);
    expect(read.value?.adults.at(-1)).toMatchObject({ id: 'more-1', role: 'One more', skills: ['pit'] });
    expect(readDay('a.yaml', editDay(added, [{ path: ['adults', 'more-1'], remove: true }])).value).toEqual(
      said,
    );
  });
});

test.each([
  { name: 'words that YAML would read as something else', value: 'yes' },
  { name: 'a comma in braces', value: 'Pots, and more' },
  { name: 'a brace', value: 'Pots } more' },
  { name: 'a number as words', value: '12' },
  { name: 'nothing but a mark', value: ': - #' },
  { name: 'an accent', value: 'Töpfe' },
])('$name comes back as it was written', ({ value }) => {
  const changed = editDay(text, [{ path: ['stations', 'pots', 'name'], value }]);
  expect(readDay('a.yaml', changed).value?.stations[2]?.name).toBe(value);
});

test('what is not there cannot be taken away, and a text that is no map stays as it is', () => {
  expect(editDay(text, [{ path: ['adults', 'nobody', 'lunch'], remove: true }])).toContain('pit-lead');
  for (const odd of ['', '[]', 'title: [', 'x'])
    expect(editDay(odd, [{ path: ['title'], value: 'A' }])).toBe(odd);
});

test('the example', () => {
  expect(editDay('title: A # ours\n', [{ path: ['title'], value: 'B' }])).toBe('title: B # ours\n');
});
