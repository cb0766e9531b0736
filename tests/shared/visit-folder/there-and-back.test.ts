import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { MOST_AT_ONCE, lotsWithin, openZip, saveZip } from '../../../shared/visit-folder/index.ts';
import { gravelEnd } from '../../content/zips/gravel-end.ts';
import { home } from '../../demo.ts';
import { anyVisit, inOrder, plainly } from './any-visit.ts';

const firstVersion = new Uint8Array(readFileSync(join(home, 'tests/content/zips/first-version.zip')));

// Written by saveZip on 2026-11-29, the day the first zips were made: whatever is written later, these open.
test('a zip of the first version opens', () => {
  const { visits, left, fault } = openZip(firstVersion);
  expect({ left, fault }).toEqual({ left: [], fault: null });
  expect(visits.map(plainly)).toEqual([plainly(gravelEnd)]);
});

test('a visit comes out of its zip as it went in', () => {
  fc.assert(
    fc.property(anyVisit, (visit) => {
      const { visits, left, fault } = openZip(saveZip([visit]).bytes);
      expect({ left, fault }).toEqual({ left: [], fault: null });
      expect(visits.map(plainly)).toEqual([plainly(visit)]);
    }),
    { numRuns: 150 },
  );
});

test('every visit of a shelf comes out of one zip as it went in, whatever names and sites they share', () => {
  let [together, apart] = [0, 0];
  fc.assert(
    fc.property(fc.array(anyVisit, { minLength: 2, maxLength: 5 }), (shelf) => {
      const saved = saveZip(shelf);
      const { visits, left, fault } = openZip(saved.bytes);
      expect({ left, fault }).toEqual({ left: [], fault: null });
      // Of two that are the same in all, as of two pulls of one print, each is there.
      expect(inOrder(visits)).toEqual(inOrder(shelf));
      together += saved.visits.filter(({ folder }) => folder === '').length;
      apart += saved.visits.filter(({ folder }) => folder !== '').length;
    }),
    { numRuns: 150 },
  );
  // Both ways are really gone.
  expect(together).toBeGreaterThan(80);
  expect(apart).toBeGreaterThan(80);
});

test('lines that end in two signs come back ending in one, and nothing else of them changes', () => {
  const windows = { ...gravelEnd, text: gravelEnd.text.replaceAll('\n', '\r\n') };
  expect(openZip(saveZip([windows]).bytes).visits.map(plainly)).toEqual([plainly(gravelEnd)]);
});

test('the same visits in any order give the same bytes', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(anyVisit, { selector: ({ name }) => name, minLength: 1, maxLength: 4 }),
      (shelf) => Buffer.compare(saveZip(shelf).bytes, saveZip(shelf.toReversed()).bytes) === 0,
    ),
    { numRuns: 50 },
  );
});

test('a name that no file may have is changed, and nothing is lost', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (name) => {
      const { visits, left, fault } = openZip(saveZip([{ ...gravelEnd, name }]).bytes);
      expect({ left, fault }).toEqual({ left: [], fault: null });
      expect(visits.map((visit) => ({ ...visit, name: gravelEnd.name })).map(plainly)).toEqual([
        plainly(gravelEnd),
      ]);
    }),
    { numRuns: 100 },
  );
});

test('a shelf that is more than is opened at once is saved in lots that are not', () => {
  const heavy = (name: string, bytes: number) => ({
    ...gravelEnd,
    name,
    photos: new Map([['jaw.jpg', new Uint8Array(bytes)]]),
  });
  const shelf = [heavy('a', 14_000_000), heavy('b', 14_000_000), heavy('c', 14_000_000), heavy('d', 1000)];
  const lots = lotsWithin(shelf, MOST_AT_ONCE);
  expect(lots.map((lot) => lot.map(({ name }) => name))).toEqual([
    ['a', 'b'],
    ['c', 'd'],
  ]);
  expect(lotsWithin(shelf, { bytes: 100, files: 1000 }).length).toBe(4);
  expect(lotsWithin(shelf, { bytes: 100_000_000, files: 9 }).map((lot) => lot.length)).toEqual([2, 2]);
  expect(lotsWithin([], MOST_AT_ONCE)).toEqual([]);
});
