import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { photoRows, removePhotoRow, setPhotoRow, type PhotoRow } from '../../../shared/bench/photo-rows.ts';
import { home } from '../../demo.ts';

const row: PhotoRow = {
  find: 'P3-124',
  file: 'a-P3-124.jpg',
  shows: 'A grey leaf: both faces flaked, one tip gone.',
  credit: 'Photograph: invented',
  lengthPx: 612,
};
const other: PhotoRow = { ...row, find: 'P7-165', file: 'a-P7-165.jpg', lengthPx: null };

const LINES = `  - find: P3-124
    file: a-P3-124.jpg
    shows: "A grey leaf: both faces flaked, one tip gone."
    credit: "Photograph: invented"
    length-px: 612
`;

const DEMO = readFileSync(join(home, 'content/sites/wendle-marsh.yaml'), 'utf8');

const SMALL = 'id: a # mine\nsoils: gravel\n';

describe('a row is put in', () => {
  test('at the foot of a site file that has none, and not another sign is changed', () => {
    expect(setPhotoRow(DEMO, row)).toBe(`${DEMO}photos:\n${LINES}`);
  });

  test('after a file without a line end', () => {
    expect(setPhotoRow('id: a # mine', row)).toBe(`id: a # mine\nphotos:\n${LINES}`);
  });

  test('after the last of a list, before what follows it, as far in as the others', () => {
    const list = `id: a
photos: # my own
- find: P7-165 # the best of them
  file: b.png
  shows: |
    a blade
    in two pieces
  credit: A
# what follows
soils: gravel
`;
    const put = setPhotoRow(list, { ...row, lengthPx: null });
    expect(put).toBe(
      list.replace(
        '# what follows',
        `- find: P3-124
  file: a-P3-124.jpg
  shows: "A grey leaf: both faces flaked, one tip gone."
  credit: "Photograph: invented"
# what follows`,
      ),
    );
  });

  test.each(['photos: []', 'photos:', 'photos: [{ find: P7-165, file: b.jpg, shows: x, credit: y }]'])(
    'where it is written %s',
    (photos) => {
      const put = setPhotoRow(`id: a # mine\n${photos}\nsoils: gravel\n`, row);
      expect(photoRows(put ?? '').at(-1)).toEqual(row);
      expect(put).toContain('id: a # mine\n');
      expect(put).toContain('\nsoils: gravel\n');
    },
  );

  test('whatever its words are, and is read back the same', () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1, maxLength: 60, unit: 'grapheme' }),
        fc.string({ minLength: 1, maxLength: 40 }),
        (shows, credit) => {
          const first = setPhotoRow(SMALL, { ...row, shows, credit });
          expect(photoRows(first ?? '')).toEqual([{ ...row, shows, credit }]);
          const second = setPhotoRow(first ?? '', { ...other, shows: credit, credit: shows });
          expect(photoRows(second ?? '')).toEqual([
            { ...row, shows, credit },
            { ...other, shows: credit, credit: shows },
          ]);
          expect(second?.startsWith(SMALL)).toBe(true);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });

  test('nowhere in a file that cannot be read', () => {
    expect(setPhotoRow('id: [a', row)).toBeNull();
    expect(setPhotoRow('- a list', row)).toBeNull();
  });
});

describe('a row that is there', () => {
  const both = setPhotoRow(setPhotoRow(DEMO, row) ?? '', other) ?? '';

  test('is changed where it stands, its scale bar too', () => {
    const noted = both.replace('length-px: 612', 'length-px: 612 # counted twice');
    const changed = setPhotoRow(noted, { ...row, credit: 'B', lengthPx: 500 });
    expect(changed).toBe(noted.replace('"Photograph: invented"', 'B').replace('612 #', '500 #'));
    const without = setPhotoRow(both, { ...row, lengthPx: null });
    expect(without).toBe(both.replace('    length-px: 612\n', ''));
    expect(setPhotoRow(both, row)).toBe(both);
  });

  test('is taken out, and the last takes the list with it', () => {
    const one = removePhotoRow(both, 'P7-165');
    expect(one).toBe(setPhotoRow(DEMO, row));
    expect(removePhotoRow(one ?? '', 'P3-124')).toBe(DEMO);
    expect(removePhotoRow(DEMO, 'P3-124')).toBeNull();
  });
});

test('rows without a find or a file are no photographs, and stay in the text', () => {
  const text = 'id: a\nphotos:\n  - shows: what?\n';
  expect(photoRows(text)).toEqual([]);
  expect(setPhotoRow(text, { ...row, lengthPx: null })).toContain('  - shows: what?\n');
});
