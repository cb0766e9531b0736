import { describe, expect, test } from 'vitest';
import {
  answerInto,
  intoSite,
  NO_ANSWERS,
  readFindsIn,
  siteFiles,
  writeInto,
  type Answers,
  type IntoSite,
} from '../../../shared/finds-in/index.ts';
import { readSite, type ContentFile } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import { demoWords } from './demo-words.ts';
import { SMALL_SITE, SMALL_TABLE } from './small-site.ts';

const { vocabulary } = demoLibrary;
const file = (path: string, text: string): ContentFile => ({ path, file: path, text });
const FILES = [file('sites/gravel-end.yaml', SMALL_SITE), file('sites/gravel-end.finds.csv', SMALL_TABLE)];

interface Taken {
  readonly into: IntoSite;
  readonly files: readonly ContentFile[] | null;
}

/** A list taken into a site, as the Bench and the command line do it. */
function take(list: string, answers: Answers = NO_ANSWERS, files: readonly ContentFile[] = FILES): Taken {
  const own = siteFiles(files, 'gravel-end');
  if (own === null) throw new Error('no such site');
  const { value: site } = readSite(own.yaml.file, own.yaml.text, own.tables, vocabulary);
  if (site === null) throw new Error('the site cannot be read');
  const read = readFindsIn(list, { vocabulary, words: demoWords, site, answers, status: site.status });
  const into = intoSite(read, site, answers);
  return { into, files: writeInto(own, site, into, vocabulary) };
}

const NAMES = 'SF,Pit,Context,Object,Material,Wt (g),L (mm),W (mm),Th (mm),State,Period,Notes';
const row = (sf: string, pit: string, context: string, rest: string): string =>
  `${sf},${pit},${context},${rest}`;
const FLAKE = 'flake,flint,,40,30,8,whole,Late Neolithic,';
const list = (...rows: readonly string[]): string => `${[NAMES, ...rows].join('\n')}\n`;

/** The answer that the nth proposal of the first question gives. */
function choose(text: string, proposal: number, answers: Answers = NO_ANSWERS, files = FILES): Answers {
  const [question] = take(text, answers, files).into.questions;
  const value = question?.proposals[proposal]?.value;
  if (question === undefined || value === undefined) throw new Error('nothing is asked');
  return answerInto(answers, question, value, question.isShared ? 'equal' : 'cell');
}
const textOf = ({ files }: Taken, ending: string): string =>
  files?.find(({ path }) => path.endsWith(ending))?.text ?? '';

describe('finds that the site does not have yet', () => {
  test('stand at the end of its finds table, in the table’s own order of columns', () => {
    const taken = take(list(row('7', 'P2', '201', `${FLAKE}from the sieve`)));
    expect(taken.into.counts).toEqual({ fresh: 1, same: 0, replaced: 0, waiting: 0, leftOut: 0 });
    expect(textOf(taken, '.finds.csv')).toBe(
      `${SMALL_TABLE}7,P2,201,flake,flint,whole,flaked,waste-from-knapping,late-neolithic,evidence,40,30,8,from the sieve\n`,
    );
    expect(textOf(taken, '.yaml')).toBe(SMALL_SITE);
  });

  test('stand in a table beside it where it has no column for what they say', () => {
    const taken = take(list(row('7', 'P2', '201', FLAKE.replace('flint,,', 'flint,18,'))));
    expect(textOf(taken, '.finds.csv')).toBe(SMALL_TABLE);
    expect(textOf(taken, '.finds-2.csv')).toMatch(
      /^pit,small find,.*\nP2,7,201,40,30,8,flake,flint,[^\n]*,18,/,
    );
  });

  test('stand in a table beside the file where all its finds stand in the file', () => {
    const [yaml] = FILES;
    const taken = take(list(row('7', 'P2', '201', FLAKE)), NO_ANSWERS, yaml === undefined ? [] : [yaml]);
    expect(textOf(taken, '.yaml')).toBe(SMALL_SITE);
    expect(textOf(taken, 'gravel-end.finds.csv')).toContain('\nP2,7,201,40,30,8,flake,');
  });

  test('keep the line ends of a table from elsewhere, and end a last line that was open', () => {
    const crlf = SMALL_TABLE.replaceAll('\n', '\r\n').replace(/\r\n$/, '');
    const files = [file('sites/gravel-end.yaml', SMALL_SITE), file('sites/gravel-end.finds.csv', crlf)];
    const taken = take(list(row('7', 'P2', '201', FLAKE)), NO_ANSWERS, files);
    expect(textOf(taken, '.finds.csv')).toMatch(/^[^]*,\r\n7,P2,201,[^\n]*\r\n$/);
    expect(textOf(taken, '.finds.csv').startsWith(`${crlf}\r\n`)).toBe(true);
  });

  test('go into a table of their own where the last quote of the old one never closes', () => {
    const torn = `${SMALL_TABLE}4,P2,201,core,flint,whole,flaked,making-flakes,late-neolithic,evidence,6,5,4,"torn`;
    const files = [file('sites/gravel-end.yaml', SMALL_SITE), file('sites/gravel-end.finds.csv', torn)];
    const taken = take(list(row('7', 'P2', '201', FLAKE)), NO_ANSWERS, files);
    expect(textOf(taken, '.finds.csv')).toBe(torn);
    expect(textOf(taken, '.finds-2.csv')).toContain('\nP2,7,201,');
  });
});

describe('finds that are there already', () => {
  const same = list(
    row('1', 'p1', '(101)', 'Flake,Flint,,5.2 cm,38,9,,,'),
    row('2', 'P2', '201', 'core,flint,,64,55,43,,,'),
  );

  test('are told as the same, with the record they are, and nothing is written', () => {
    const taken = take(same);
    expect(taken.into.counts).toEqual({ fresh: 0, same: 2, replaced: 0, waiting: 0, leftOut: 0 });
    expect(taken.into.rows.map(({ reason }) => reason)).toEqual([
      'it is there already, the same: P1-1',
      'it is there already, the same: P2-2',
    ]);
    expect(taken.files?.map(({ text }) => text)).toEqual(FILES.map(({ text }) => text));
  });

  test('are asked about where they differ in what the row says; what it does not say counts for nothing', () => {
    const { into } = take(list(row('2', 'P2', '201', 'core,flint,,66,55,43,,,')));
    expect(
      into.questions.map(({ asked, proposals }) => [asked, proposals.map(({ label }) => label)]),
    ).toEqual([
      [
        'Find P2-2 is there already and differs: length in mm 64 there, 66 here. Which shall stand?',
        [
          'leave the row out: P2-2 stays as it is',
          'put what the row says in the record of P2-2',
          'another find: number it 4',
        ],
      ],
    ]);
    expect(into.counts).toEqual({ fresh: 0, same: 0, replaced: 0, waiting: 1, leftOut: 0 });
  });

  const differs = list(row('2', 'P2', '201', 'core,flint,,66,55,43,,,'), row('9', 'P2', '201', FLAKE));

  test('leave the row out: the record stays', () => {
    const answers = choose(differs, 0);
    const { into, files } = take(differs, answers);
    expect(into.counts).toEqual({ fresh: 1, same: 0, replaced: 0, waiting: 0, leftOut: 1 });
    expect(into.rows[0]?.reason).toBe('you left it out');
    expect(files?.[1]?.text.startsWith(SMALL_TABLE)).toBe(true);
  });

  test('replace: one cell is written anew, its note is kept, and the same list then changes nothing', () => {
    const answers = choose(differs, 1);
    const taken = take(differs, answers);
    expect(taken.into.counts).toEqual({ fresh: 1, same: 0, replaced: 1, waiting: 0, leftOut: 0 });
    expect(textOf(taken, '.finds.csv').startsWith(SMALL_TABLE.replace('64,55,43', '66,55,43'))).toBe(true);
    const again = take(differs, answers, [...(taken.files ?? [])]);
    expect(again.into.counts).toMatchObject({ fresh: 0, same: 2, replaced: 0 });
    expect(again.files).toEqual(taken.files);
  });

  test('number it on: a new find with the next free number, told as there when the list is taken again', () => {
    const answers = choose(differs, 2);
    const taken = take(differs, answers);
    // 9 is the list's own.
    expect(taken.into.fresh.map(({ id }) => id)).toEqual(['P2-10', 'P2-9']);
    const again = take(differs, NO_ANSWERS, [...(taken.files ?? [])]);
    expect(again.into.counts).toMatchObject({ fresh: 0, same: 1, waiting: 1 });
    expect(again.into.questions[0]?.proposals[0]?.label).toBe('leave the row out: it is there as P2-10');
  });

  test('replace in the file itself: one value, its comment beside it', () => {
    const text = list(row('1', 'P1', '102', 'flake,flint,,52,38,9,,,'));
    const taken = take(text, choose(text, 1));
    expect(textOf(taken, '.yaml')).toBe(SMALL_SITE.replace('context: 101   # near', 'context: 102   # near'));
  });

  test('a number that stands in another pit is asked about, and its place is never moved', () => {
    const text = list(row('2', 'P1', '101', 'core,flint,,66,55,43,,,'));
    expect(take(text).into.questions[0]?.proposals.map(({ label }) => label)).toEqual([
      'leave the row out: P2-2 stays as it is',
      'it is P2-2: keep its place, and put the rest in its record',
      'another find: number it 4',
    ]);
    const taken = take(text, choose(text, 1));
    expect(textOf(taken, '.finds.csv')).toBe(SMALL_TABLE.replace('64,55,43', '66,55,43'));
  });

  test('rows without numbers: as many as there are alike are the same, the others new', () => {
    const rows = ['', '', ''].map((sf) => row(sf, 'P1', '102', FLAKE));
    const taken = take(list(...rows.slice(0, 2)));
    expect(taken.into.fresh.map(({ id }) => id)).toEqual(['P1-4', 'P1-5']);
    const files = [...(taken.files ?? [])];
    expect(take(list(...rows.slice(0, 2)), NO_ANSWERS, files).into.counts).toMatchObject({
      fresh: 0,
      same: 2,
    });
    expect(take(list(...rows), NO_ANSWERS, files).into.counts).toMatchObject({ fresh: 1, same: 2 });
  });

  test('a list of numbers and weights alone is held against the records, wherever they lie', () => {
    const { into } = take('SF,Object,L (mm)\n2,core,64\n3,flake,31\n8,flake,20\n');
    expect(into.counts).toEqual({ fresh: 0, same: 1, replaced: 0, waiting: 2, leftOut: 0 });
    expect(into.questions.map(({ reason, received }) => [reason, received])).toEqual([
      ['number-there', '3'],
      ['place-not-said', 'no place'],
    ]);
  });
});

describe('a place the site does not have', () => {
  const labels = (text: string): readonly (string | undefined)[] => {
    const [question] = take(text).into.questions;
    return [question?.asked, ...(question?.proposals ?? []).map(({ label }) => label)];
  };

  test.each([
    {
      name: 'a pit it does not have',
      at: ['P5', '205'],
      told: [
        'The site has no pit "P5", where the row puts context 205. Where did it lie?',
        '201 in P2, the nearest the site has',
        '102 in P1, whose name is near',
        'a new fill 205 in P2',
        'a new pit P5 with a fill 205',
      ],
    },
    {
      name: 'a context its pit does not have',
      at: ['P1', '103'],
      told: [
        'Pit P1 of the site has no context 103. Where did it lie?',
        '102 in P1, the nearest the site has',
        'a new fill 103 in P1',
      ],
    },
    {
      name: 'a context of another pit',
      at: ['P1', '201'],
      told: [
        'Context 201 is a fill of P2 in the site, and the row says P1. Where did it lie?',
        '201 in P2, as the site has it',
        '102 in P1, the nearest the site has',
      ],
    },
    {
      name: 'a context without a pit, which numbers a cut',
      at: ['', '100'],
      told: ['The site has no context 100. Where did it lie?', '101 in P1, the nearest the site has'],
    },
  ])('$name is asked about, the nearest first', ({ at: [pit = '', context = ''], told }) => {
    expect(labels(list(row('7', pit, context, FLAKE)))).toEqual(told);
  });

  const two = list(row('7', 'P1', '103', FLAKE), row('8', 'P1', '103', FLAKE));

  test('one answer serves every row that says the same, and a new fill is written as a stand-in', () => {
    const taken = take(two, choose(two, 1));
    expect(taken.into.fresh.map(({ id, context }) => [id, context])).toEqual([
      ['P1-7', 103],
      ['P1-8', 103],
    ]);
    expect(textOf(taken, '.yaml')).toBe(
      SMALL_SITE.replace(
        '        thickness-mm: 150\n    finds:',
        '        thickness-mm: 150\n      # STAND-INS, made for a finds list: this fill’s description, thickness and place among the others.\n      - {context: 103, description: "write what the fill is", thickness-mm: 150}\n    finds:',
      ),
    );
    expect(take(two, NO_ANSWERS, [...(taken.files ?? [])]).into.counts).toMatchObject({ fresh: 0, same: 2 });
  });

  test('a new pit is written as a stand-in after the others, beside them and at their level', () => {
    const text = list(row('7', 'P5', '506', FLAKE), row('8', 'P5', '507', FLAKE));
    const first = choose(text, 3);
    const both = choose(text, 3, first);
    const taken = take(text, both);
    expect(taken.into.places).toEqual([
      { pit: 'P5', context: 506 },
      { pit: 'P5', context: 507 },
    ]);
    const yaml = textOf(taken, '.yaml');
    expect(yaml.startsWith(SMALL_SITE.slice(0, SMALL_SITE.indexOf('    # nothing more')))).toBe(true);
    expect(yaml).toContain('    # nothing more was found\n');
    expect(yaml).toContain(
      '  # STAND-INS, made for a finds list: this pit’s cut number, centre, level, size and profile, and its fills.\n',
    );
    expect(yaml).toContain(
      '  - id: "P5"\n    cut: 505\n    centre: {east-m: 9.25, north-m: 1}\n    top-level-m-od: 8.4\n',
    );
  });

  test('what the lead writes is read: a pit, a context, or both', () => {
    for (const [written, place] of [
      ['P2 201', 'P2-7'],
      ['201', 'P2-7'],
      ['Pit 2, 201', 'P2-7'],
      ['102', 'P1-7'],
    ] as const) {
      const text = list(row('7', 'P5', '205', FLAKE));
      const [question] = take(text).into.questions;
      if (question === undefined) throw new Error('nothing is asked');
      const { into } = take(text, answerInto(NO_ANSWERS, question, written, 'cell'));
      expect(into.fresh.map(({ id }) => id)).toEqual([place]);
    }
  });

  test('an answer that is no place of the site either is asked again', () => {
    const text = list(row('7', 'P5', '205', FLAKE));
    const [question] = take(text).into.questions;
    if (question === undefined) throw new Error('nothing is asked');
    const { into } = take(text, answerInto(NO_ANSWERS, question, 'P2', 'equal'));
    expect(into.questions.map(({ asked, received }) => [asked, received])).toEqual([
      ['Pit P2 of the site has no context 205. Where did it lie?', 'P5/205'],
    ]);
  });
});

test('a row that waits for its own answer, and one left out, are counted as such', () => {
  const { into } = take(list(row('7', 'P2', '201', 'Zzyzx,flint,,40,30,8,,,'), ',,,,,,,,,,,'));
  expect(into.counts).toEqual({ fresh: 0, same: 0, replaced: 0, waiting: 1, leftOut: 1 });
  expect(into.rows[1]?.reason).toBe('nothing is written');
});
