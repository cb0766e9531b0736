import { describe, expect, test } from 'vitest';
import { asksOf, tellPlay } from '../../../../shared/activities/index.ts';
import { PIECE_IS, SESSION_EXPOSURES } from '../../../../shared/activities/handle/activity.ts';
import { holdLines, promptsFor } from '../../../../shared/activities/handle/prompts.ts';
import { EDGE_CLASSES } from '../../../../shared/safety/index.ts';
import { BANDS } from '../../../../shared/library/index.ts';
import { demoLibrary } from '../../../demo.ts';
import { compiledTable, tableActivity } from './handle-of.ts';

const codes = (bands: readonly string[], block: Parameters<typeof compiledTable>[1]): readonly string[] =>
  compiledTable(bands, block).problems.map(({ code, grade }) => `${code} ${grade}`);

describe('what a lead may write', () => {
  test('a find nobody knows is told with the nearest', () => {
    const { problems } = compiledTable(['9-11'], { pieces: [{ find: 'P3-1277', is: 'original' }] });
    expect(problems.map(({ code, edit }) => [code, edit?.text])).toEqual([['find-unknown', 'P3-127']]);
  });

  test('the same find twice, a word that is no kind of piece, no pieces', () => {
    const sherd = { find: 'P3-127', is: 'original' };
    expect(codes(['9-11'], { pieces: [sherd, sherd] })).toEqual(['find-repeated error']);
    expect(codes(['9-11'], { pieces: [{ ...sherd, is: 'orignal' }] })).toEqual(['word-unknown error']);
    expect(codes(['9-11'], { pieces: [] })).toEqual(['value-unfit error']);
  });

  test('more pieces than the band keeps in view, in less time than they need, are cautions', () => {
    const finds = ['P3-125', 'P3-126', 'P3-127', 'P3-129', 'P3-130', 'P3-131', 'P4-140'];
    const pieces = finds.map((find) => ({ find, is: 'original' }));
    // Ages 4 to 5: six finds, half a minute a find, each held twice.
    expect(codes(['4-5'], { pieces, minutes: 6 })).toEqual([
      'minutes-under caution',
      'finds-too-many caution',
    ]);
    expect(codes(['4-5'], { pieces: pieces.slice(0, 6), minutes: 6 })).toEqual([]);
  });

  test('pieces are passed in the order in which they are written, whatever the seed', () => {
    const finds = ['P3-127', 'P1-108', 'P3-125'];
    const { pieces } = tableActivity(['9-11'], { pieces: finds.map((find) => ({ find, is: 'original' })) });
    expect(pieces.map(({ id }) => id)).toEqual(finds);
  });
});

describe('what is derived for a piece', () => {
  const sensesOf = (piece: Readonly<Record<string, unknown>>, band = '14-16') =>
    tableActivity([band], { pieces: [piece] }).pieces[0]?.prompts.map(
      ({ sense, says }) => `${sense} ${says.map(({ by }) => by).join()}`,
    );

  test.each([
    ['a sherd itself', { find: 'P3-127', is: 'original' }, ['look', 'feel', 'listen']],
    [
      'a cast of it, which has neither its feel nor its sound',
      { find: 'P3-127', is: 'blunt-replica' },
      ['look', 'feel'],
    ],
    ['a sherd in its case', { find: 'P3-127', is: 'original', exposure: 'look' }, ['look']],
    ['a blade: nobody knocks it', { find: 'P1-103', is: 'original' }, ['look', 'feel']],
    [
      'a pin that the adult holds',
      { find: 'P3-124', is: 'original', exposure: 'touch-held' },
      ['look', 'feel'],
    ],
  ])('%s', (_, piece, senses) => {
    expect(sensesOf(piece)).toEqual(senses.map((sense) => `${sense} practice`));
  });

  test('the lead’s own words stand in place of the usual ones, and say whose they are', () => {
    const piece = { find: 'P3-127', is: 'blunt-replica', listen: 'Is it as loud as a cup?' };
    expect(sensesOf(piece)).toEqual(['look practice', 'feel practice', 'listen lead']);
  });

  test('how it is held is said band by band, once for bands that read the same', () => {
    const hold = { '11-14': 'Grip it by its middle.' };
    const [piece] = tableActivity(['5-7', '9-11', '11-14', '7-9'], {
      pieces: [{ find: 'P7-165', is: 'blunt-replica', hold }],
    }).pieces;
    expect(piece?.hold).toEqual([
      { bands: ['5-7'], by: 'practice', words: 'On your flat hand, low over the tray.' },
      { bands: ['7-9', '9-11'], by: 'practice', words: 'On your flat palm, low over the tray.' },
      { bands: ['11-14'], by: 'lead', words: 'Grip it by its middle.' },
    ]);
  });

  test('nothing derived ever sends a finger along an edge, or a thing against a thing', () => {
    const finds = demoLibrary.sites.flatMap(({ pits }) => pits.flatMap((pit) => pit.finds));
    const said = BANDS.flatMap((band) =>
      finds.flatMap((find) =>
        PIECE_IS.flatMap((is) =>
          SESSION_EXPOSURES.flatMap((exposure) =>
            EDGE_CLASSES.flatMap((edge) => {
              const met = { is, edge, exposure };
              return [
                ...promptsFor(find, met, {}, [band]).flatMap(({ says }) => says),
                ...holdLines(find, met, undefined, [band]),
              ].map(({ words }) => words);
            }),
          ),
        ),
      ),
    );
    const distinct = [...new Set(said)];
    expect(distinct.length).toBeGreaterThan(40);
    expect(
      distinct.filter((words) =>
        /\b(?:along (?:the|its|an) edge|knock|strike|hit|scratch|test the edge|cut with|lick|taste|smell)\b/i.test(
          words,
        ),
      ),
    ).toEqual([]);
  });
});

describe('what a session asks, for claims', () => {
  const met = (pieces: readonly Readonly<Record<string, unknown>>[]): readonly string[] =>
    asksOf(tableActivity(['11-14'], { pieces }), demoLibrary).met;

  test('things only looked at were not handled', () => {
    expect(met([{ find: 'P3-127', is: 'original', exposure: 'look' }])).toEqual([]);
  });

  test('casts are handled, and say nothing of what a thing is made of', () => {
    expect(met([{ find: 'P3-127', is: 'blunt-replica' }])).toEqual(['real-objects', 'finds-as-evidence']);
  });

  test('three rocks are flint, sandstone and quartzite in the hand, not two and a cast', () => {
    const three = [
      { find: 'P1-108', is: 'replica' },
      { find: 'P3-125', is: 'original' },
      { find: 'P3-131', is: 'original' },
    ];
    expect(met(three)).toContain('rocks');
    expect(met([...three.slice(0, 2), { find: 'P3-131', is: 'blunt-replica' }])).not.toContain('rocks');
  });

  test.each([
    { grade: 'taught', fault: undefined },
    { grade: 'practised', fault: 'grade-too-high' },
  ])('products looked into are $grade: $fault, for no play shows more', ({ grade, fault }) => {
    const claims = [{ outcome: 'en-dt-ks2-existing-products', grade }];
    const pieces = [{ find: 'P3-127', is: 'original' }];
    const compiled = compiledTable(['9-11'], { pieces }, { claims });
    expect(compiled.claims[0]?.fault?.fault).toBe(fault);
  });
});

test('what was done is told in the order of passing, without what no piece asks', () => {
  const activity = tableActivity(['11-14'], {
    pieces: [
      { find: 'P3-127', is: 'original' },
      { find: 'P3-124', is: 'blunt-replica' },
      { find: 'P1-108', is: 'original' },
    ],
  });
  const met = { 'P1-108': [], 'P3-124': ['listen', 'feel'], 'P3-127': ['listen', 'look'] } as const;
  const play = {
    activity: activity.id,
    met: Object.fromEntries(Object.entries(met).map(([id, senses]) => [id, [...senses]])),
    asks: { 'P1-108': 4, 'P3-127': 9 },
  };
  expect(tellPlay(activity, play)).toEqual({
    met: [
      { piece: 'P3-127', senses: ['look', 'listen'] },
      { piece: 'P3-124', senses: ['feel'] },
    ],
    notMet: ['P1-108'],
    asks: [
      { piece: 'P3-127', hands: 9 },
      { piece: 'P1-108', hands: 4 },
    ],
  });
});
