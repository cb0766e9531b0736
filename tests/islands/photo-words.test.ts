import { describe, expect, test } from 'vitest';
import { missingIn, tellsWhat } from '../../src/bench/photos/photo-draft.ts';
import type { PictureRefusal } from '../../src/bench/photos/picture-taken.ts';
import { tellCarried, tellRefused, tellTaken } from '../../src/bench/photos/tell-taken.ts';

describe('what a file told', () => {
  test.each([
    {
      carried: ['time', 'other words', 'device', 'place'] as const,
      told: 'The file said where it was taken, on what device, when, and other things about it: that is left out.',
    },
    { carried: ['time'] as const, told: 'The file said when: that is left out.' },
    { carried: [], told: 'The file said nothing of place, device or time.' },
    {
      carried: null,
      told: 'It is drawn anew: whatever its file said of place, device and time is left out.',
    },
  ])('is said: $carried', ({ carried, told }) => {
    expect(tellCarried(carried)).toBe(told);
  });

  test('stands after what has become of it', () => {
    const taken = { bytes: new Uint8Array(46_001), widthPx: 1000, heightPx: 750, carried: [] };
    expect(tellTaken(2_615_318, taken)).toBe(
      '1,000 by 750 points, 47 kB; the file has 2,616 kB. The file said nothing of place, device or time.',
    );
  });
});

const REFUSALS: { readonly [R in PictureRefusal]: string } = {
  empty: 'an empty file',
  'not-a-picture': 'a file that is not a picture, whatever its name says',
  'other-picture': 'a picture of a kind that not every browser shows',
  broken: 'a picture that is cut short or damaged',
  'too-many-points': 'a picture of a hundred million points or more',
  'too-large': '93 MB',
  'cannot-open': 'one that it cannot',
  'too-fine': 'one so full of small marks that it cannot',
};

test.each(Object.entries(REFUSALS) as [PictureRefusal, string][])(
  'a file refused as %s is told by its name, with what was expected, received, and a mend',
  (refusal, received) => {
    const told = tellRefused('a.jpg', 92_100_000, refusal);
    expect(told).toMatch(
      /^a\.jpg: expected [^{}]+; received [^{}]+\. To mend it, [^{}]+\. The file itself is left as it is, and nothing else is lost\.$/,
    );
    expect(told).toContain(`received ${received}.`);
  },
);

test('a file over what is read is told the limit it broke', () => {
  expect(tellRefused('a.jpg', 80_000_001, 'too-large')).toContain('expected a file of at most 80 MB');
  expect(tellRefused('a.jpg', 1, 'too-fine')).toContain('shrunk to 120 kB');
});

test('what is missing comes in the order of the form, and spaces say nothing', () => {
  const said = { site: 'a', find: '', shows: ' ', credit: 'A', bar: null };
  expect(missingIn(said)).toEqual(['find', 'shows']);
  expect(missingIn({ ...said, find: 'P1-1', shows: 'a', credit: '\n' })).toEqual(['credit']);
});

test.each([
  { shows: 'A grey arrowhead.', type: 'arrowhead', word: 'arrowhead' },
  { shows: 'Two Hazelnut  Shells', type: 'hazelnut shells', word: 'hazelnut shells' },
  { shows: 'Three flakes', type: 'flake', word: 'flake' },
  { shows: 'Flaked all over', type: 'flake', word: null },
  { shows: 'Grey', type: '', word: null },
])('$shows gives away $word', ({ shows, type, word }) => {
  expect(tellsWhat(shows, type)).toBe(word);
});
