import { expect, test } from 'vitest';
import { pitName } from '../../../shared/finds-in/row-names.ts';
import { withoutNames } from '../../../shared/finds-in/row-note.ts';
import { readFindsIn, REASONS, type Reason } from '../../../shared/finds-in/index.ts';
import { demoLibrary } from '../../demo.ts';
import { demoWords } from './demo-words.ts';

const NAMES = 'SF,Context,Object,Material,Qty,Wt (g),L (mm),W (mm),Th (mm),Period,Notes';
/** A sound row, and then a row with one thing the matter: column by its place from 0. */
const SOUND = ['1', '12', 'flake', 'flint', '1', '18', '52', '38', '9', 'Late Neolithic', ''];
const rowWith = (changes: Readonly<Record<number, string>>): string =>
  ['2', ...SOUND.slice(1)].map((cell, index) => changes[index] ?? cell).join(',');
const read = (...rows: readonly string[]): ReturnType<typeof readFindsIn> =>
  readFindsIn([NAMES, SOUND.join(','), ...rows].join('\n'), {
    vocabulary: demoLibrary.vocabulary,
    words: demoWords,
  });

/** 35: 18 g ÷ (0.425 of the box × 2.6 g/cm³ × 5.2 cm × 0.9 cm), DER. 48 and 8: what is usual, at the size of the others. */
const CASES: readonly {
  readonly reason: Reason;
  readonly row: string;
  readonly taken: string | null;
  readonly field: string;
}[] = [
  { reason: 'beyond-limits', row: rowWith({ 6: '250000' }), field: 'length-mm', taken: '48' },
  { reason: 'beyond-usual', row: rowWith({ 6: '520' }), field: 'length-mm', taken: '520' },
  { reason: 'contradiction', row: rowWith({ 3: 'bone' }), field: 'material', taken: null },
  { reason: 'count-unclear', row: rowWith({ 10: 'in three pieces' }), field: 'count', taken: '1' },
  { reason: 'cut-not-fill', row: rowWith({ 1: '[12]' }), field: 'context', taken: '12' },
  { reason: 'formula', row: rowWith({ 5: '=F2' }), field: 'mass-g', taken: '' },
  { reason: 'loose-quote', row: rowWith({ 10: '"' }), field: 'note', taken: '"' },
  { reason: 'mass-doubtful', row: rowWith({ 5: '0.018' }), field: 'mass-g', taken: '0.018' },
  { reason: 'not-a-number', row: rowWith({ 7: 'wide' }), field: 'width-mm', taken: '35' },
  { reason: 'not-recorded', row: rowWith({ 8: '-' }), field: 'thickness-mm', taken: '8' },
  { reason: 'nothing-measured', row: rowWith({ 5: '0' }), field: 'mass-g', taken: '' },
  { reason: 'number-repeated', row: rowWith({ 0: '1' }), field: 'small-find', taken: null },
  { reason: 'number-unclear', row: rowWith({ 0: '12a' }), field: 'small-find', taken: '12' },
  { reason: 'other-unit', row: rowWith({ 5: '0.018 kg' }), field: 'mass-g', taken: '18' },
  {
    reason: 'person-named',
    row: rowWith({ 10: 'patina; dug by Mr Nobody' }),
    field: 'note',
    taken: 'patina',
  },
  { reason: 'range', row: rowWith({ 6: '50-54' }), field: 'length-mm', taken: '52' },
  { reason: 'rough', row: rowWith({ 6: 'c. 52' }), field: 'length-mm', taken: '52' },
  {
    reason: 'row-refitted',
    row: rowWith({ 2: 'Arrowhead, oblique', 6: '36', 7: '22', 8: '5', 5: '3' }),
    field: 'object-type',
    taken: 'oblique-arrowhead',
  },
  {
    reason: 'separator-unclear',
    row: rowWith({ 2: 'core', 6: '62', 7: '51', 8: '40', 5: '"1,204"' }),
    field: 'mass-g',
    taken: '1204',
  },
  { reason: 'word-open', row: rowWith({ 2: 'rubber' }), field: 'object-type', taken: null },
  { reason: 'word-taken', row: rowWith({ 2: 'flakke' }), field: 'object-type', taken: 'flake' },
  { reason: 'word-unknown', row: rowWith({ 2: 'Zzyzx' }), field: 'object-type', taken: null },
];

test.each(CASES)('$reason: $row', ({ reason, row, field, taken }) => {
  const { questions, counts } = read(row);
  const asked = questions.find((question) => question.reason === reason);
  expect(asked).toMatchObject({ row: 3, field, taken, isBlocking: taken === null });
  expect(asked?.asked).toMatch(/\?$/);
  expect(counts.found).toBeGreaterThanOrEqual(1);
});

test('every reason there is has a row above', () => {
  expect(CASES.map(({ reason }) => reason)).toEqual([...REASONS]);
});

test('a sound row is asked nothing', () => {
  expect(read(rowWith({})).questions).toEqual([]);
});

test('a word that is no slip for sure waits, whatever else the row holds', () => {
  const { questions, counts } = read(rowWith({ 2: '', 10: '' }));
  expect(questions.map(({ field, reason }) => [field, reason])).toEqual([['object-type', 'word-unknown']]);
  expect(counts.waiting).toBe(1);
});

test.each([
  { written: 'Total,,,,42,,,,,,', reason: 'a row of totals is no find' },
  { written: 'Total: 42,,,,,,,,,,', reason: 'a row of totals is no find' },
  { written: ',,,,,,,,,,', reason: 'nothing is written' },
  { written: 'Trench 2,,,,,,,,,,', reason: 'only "Trench 2" is written, as a heading is' },
  { written: '7,12,,,,,,,,,', reason: 'no object, no material, no measure' },
  { written: NAMES, reason: 'the column names over again' },
])('"$written" is left out, and it is said why', ({ written, reason }) => {
  const { rows, counts } = read(written);
  expect(rows.at(-1)).toMatchObject({ row: 3, outcome: 'left-out', reason });
  expect(counts).toMatchObject({ rows: 2, found: 1, leftOut: 1 });
});

test.each([
  { written: 'Pit 3', name: 'P3' },
  { written: '3', name: 'P3' },
  { written: 'P3', name: 'P3' },
  { written: 'Grube 12', name: 'P12' },
  { written: '[203]', name: 'P203' },
  { written: 'F12a', name: 'F12a' },
  { written: '???', name: null },
])('the pit "$written" is kept as $name', ({ written, name }) => {
  expect(pitName(written)).toBe(name);
});

test.each([
  { note: 'found by P. Nobody', kept: '' },
  { note: 'edge worn; found by P. Nobody', kept: 'edge worn' },
  { note: 'found by P. Nobody? check', kept: 'check' },
  { note: 'Dr Nobody says flake. Check it.', kept: 'Check it.' },
  { note: 'gefunden von Niemand; Kante scharf', kept: 'Kante scharf' },
  { note: 'write to nobody@example.org', kept: '' },
  { note: 'three scars, one blow', kept: 'three scars, one blow' },
  { note: '=1+1', kept: '1+1' },
])('of "$note" is kept "$kept"', ({ note, kept }) => {
  expect(
    withoutNames(
      note,
      demoWords.people.map((saying) => saying.replaceAll(' ', '-')),
    ),
  ).toBe(kept);
});
