import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  answer,
  giveColumn,
  givePit,
  giveUnit,
  LEAVE_ROW_OUT,
  NO_ANSWERS,
  readFindsIn,
  type Answers,
} from '../../../shared/finds-in/index.ts';
import { demoLibrary, home } from '../../demo.ts';
import { demoWords } from './demo-words.ts';

/** An invented list with the slips lists have. */
const text = readFileSync(join(home, 'tests/content/finds-in/finds-as-they-come.csv'), 'utf8');
const read = (answers: Answers = NO_ANSWERS, list = text): ReturnType<typeof readFindsIn> =>
  readFindsIn(list, { vocabulary: demoLibrary.vocabulary, words: demoWords, answers });

/** Every question of the list, looked through by hand against it: row, column, why, what stands there, what is taken. */
const QUESTIONS = [
  [2, 'Material', 'word-taken', 'Natural stone', 'flint'],
  [4, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [6, 'L (mm)', 'other-unit', '4.6 cm', '46'],
  [7, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [8, 'Object', 'word-taken', 'Pot sherd', 'grooved-ware-sherd'],
  [9, 'Wt (g)', 'nothing-measured', '0.0', ''],
  [10, 'Object', 'word-taken', 'Axe fragment (polished)', 'ground-edge-fragment'],
  [10, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [10, 'Notes', 'person-named', 'found by P. volunteer? check', 'check'],
  [14, 'SF No', 'number-repeated', '112', null],
  [14, 'Period', 'contradiction', 'Natural', null],
  [15, 'Wt (g)', 'mass-doubtful', '0.1', '0.1'],
  [16, 'Object', 'word-taken', 'Axe fragment (polished)', 'ground-edge-fragment'],
  [17, 'Object', 'not-recorded', '?', null],
  [17, 'Notes', 'person-named', 'found by P. volunteer? check', 'check'],
  [19, 'Object', 'word-taken', 'Jaw', 'pig-jaw'],
  [19, 'Notes', 'person-named', 'found by P. volunteer? check', 'check'],
  [20, 'Wt (g)', 'other-unit', '0.41kg', '410'],
  [21, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [22, 'Object', 'word-open', 'Rubber', null],
  [22, 'Notes', 'person-named', 'found by P. volunteer? check', 'check'],
  [23, 'Object', 'word-taken', 'Pot sherd', 'grooved-ware-sherd'],
  [24, 'Object', 'row-refitted', 'Arrowhead, oblique', 'oblique-arrowhead'],
  [25, 'Object', 'word-taken', 'Axe fragment (polished)', 'ground-edge-fragment'],
  [25, 'Qty', 'count-unclear', '1', '1'],
  [25, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [27, 'Object', 'word-taken', 'Jaw', 'pig-jaw'],
  [29, 'W (mm)', 'rough', 'c. 30', '30'],
  [30, 'Object', 'word-taken', 'Jaw', 'pig-jaw'],
  [31, 'Object', 'word-taken', 'Jaw', 'pig-jaw'],
  [33, 'Notes', 'person-named', 'found by P. volunteer? check', 'check'],
  [34, 'Material', 'word-taken', 'Natural stone', 'flint'],
  [34, 'Period', 'contradiction', 'PMED', null],
  [35, 'L (mm)', 'not-recorded', '-', '41'],
  [36, 'Object', 'word-taken', 'Pot sherd', 'grooved-ware-sherd'],
  [37, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [38, 'Object', 'word-taken', 'Axe fragment (polished)', 'ground-edge-fragment'],
  [38, 'Notes', 'person-named', 'found by P. volunteer? check', 'check'],
  [40, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
  [41, 'Object', 'word-taken', 'Axe fragment (polished)', 'ground-edge-fragment'],
  [43, 'Period', 'word-taken', 'Neo?', 'late-neolithic'],
] as const;

describe('an invented list as it comes', () => {
  const whole = read();

  test('its columns are known for what they hold', () => {
    expect(whole.columns.map(({ header, guess, unit }) => [header, guess, unit])).toEqual([
      ['SF No', 'small-find', null],
      ['Context', 'context', null],
      ['Material', 'material', null],
      ['Object', 'object-type', null],
      ['Qty', 'count', null],
      ['Wt (g)', 'mass-g', 'g'],
      ['L (mm)', 'length-mm', 'mm'],
      ['W (mm)', 'width-mm', 'mm'],
      ['Th (mm)', 'thickness-mm', 'mm'],
      ['Period', 'age', null],
      ['Notes', 'note', null],
    ]);
    expect(whole.columns.every(({ sureness }) => sureness > 0.9)).toBe(true);
  });

  test('each oddity is asked about at its row and column', () => {
    const told = whole.questions.map(({ row, header, reason, received, taken }) => [
      row,
      header,
      reason,
      received,
      taken,
    ]);
    expect(told).toEqual(QUESTIONS);
  });

  test('44 rows: 11 finds, 31 with questions of which 4 wait, a blank row and a row of totals left out', () => {
    expect(whole.counts).toEqual({ rows: 44, found: 11, asked: 31, waiting: 4, leftOut: 2 });
    expect(
      whole.rows.filter(({ outcome }) => outcome === 'left-out').map(({ row, reason }) => [row, reason]),
    ).toEqual([
      [44, 'nothing is written'],
      [45, 'a row of totals is no find'],
    ]);
  });

  test('a cell that holds an unquoted comma is put back together', () => {
    const row = whole.rows.find((each) => each.row === 24);
    expect(row?.find?.attributes).toMatchObject({
      'object-type': 'oblique-arrowhead',
      age: 'late-neolithic',
      state: 'burnt',
    });
    expect(row?.find).toMatchObject({ lengthMm: 30, widthMm: 24, thicknessMm: 6, massG: 5.1, count: 1 });
  });

  test('no name of a person is kept unless the lead says so', () => {
    expect(JSON.stringify(whole.finds)).not.toMatch(/volunteer/i);
    const [asked] = whole.questions.filter(({ reason }) => reason === 'person-named');
    expect(asked?.proposals.map(({ value }) => value)).toEqual(['check', 'found by P. volunteer? check']);
  });

  test('contexts that follow each other are taken for fills of one pit, and the lead may say otherwise', () => {
    expect(whole.pits.map(({ pit, contexts }) => [pit, contexts])).toEqual([
      ['P1', [204, 205]],
      ['P2', [211, 212]],
      ['P3', [230, 231]],
    ]);
    const said = read(givePit(givePit(NO_ANSWERS, 230, 'P7'), 231, 'P8'));
    expect(said.pits.map(({ pit }) => pit)).toEqual(['P1', 'P2', 'P7', 'P8']);
    expect(said.finds.find(({ smallFind }) => smallFind === 103)?.pit).toBe('P7');
  });

  test('what no cell gives says which rule gave it', () => {
    const pin = whole.rows.find(({ row }) => row === 7);
    expect(pin?.guessed['made-by']).toBe('usual for "bone pin"');
    expect(pin?.guessed.pit).toMatch(/211, 212/);
    expect(whole.rows.find(({ row }) => row === 5)?.guessed.state).toBe('the note says "broken"');
  });

  test('answered one by one, every row is a find', () => {
    let answers = NO_ANSWERS;
    for (let round = 0; round < 3; round += 1) {
      for (const question of read(answers).questions) {
        const [first] = question.proposals;
        if (first !== undefined) answers = answer(answers, question, first.value, 'cell');
      }
    }
    const settled = read(answers);
    expect(settled.questions).toEqual([]);
    expect(settled.counts).toEqual({ rows: 44, found: 42, asked: 0, waiting: 0, leftOut: 2 });
    expect(settled.finds.find(({ smallFind }) => smallFind === 113)?.attributes).toMatchObject({
      'object-type': 'clay-pipe-stem',
      age: 'modern',
    });
  });

  test('one answer serves all equal cells, and one cell may differ', () => {
    const jaws = whole.questions.filter(({ received }) => received === 'Jaw');
    expect(jaws.length).toBe(4);
    const [first, second] = jaws;
    if (first === undefined || second === undefined) throw new Error('no jaws');
    const all = answer(NO_ANSWERS, first, 'cattle-bone', 'equal');
    const typeAt = (answers: Answers, row: number): string | undefined =>
      read(answers).rows.find((each) => each.row === row)?.find?.attributes['object-type'];
    expect(jaws.map(({ row }) => typeAt(all, row))).toEqual(Array.from({ length: 4 }, () => 'cattle-bone'));
    const but = answer(all, second, 'pig-jaw', 'cell');
    expect([typeAt(but, first.row), typeAt(but, second.row)]).toEqual(['cattle-bone', 'pig-jaw']);
  });

  test('an answer that cannot be kept is asked again', () => {
    const [rubber] = whole.questions.filter(({ received }) => received === 'Rubber');
    if (rubber === undefined) throw new Error('no rubber');
    const said = read(answer(NO_ANSWERS, rubber, 'duck', 'cell')).questions.find(
      ({ row }) => row === rubber.row,
    );
    expect(said).toMatchObject({ reason: 'word-unknown', isBlocking: true });
    expect(said?.asked).toContain('"duck"');
  });

  test('the lead corrects a column, and gives a unit', () => {
    const swapped = read(giveColumn(giveColumn(NO_ANSWERS, 6, 'width-mm'), 7, 'length-mm'));
    expect(swapped.finds.find(({ smallFind }) => smallFind === 104)).toMatchObject({
      lengthMm: 75,
      widthMm: 82,
    });
    const inCentimetres = read(giveUnit(NO_ANSWERS, 8, 'cm'));
    expect(inCentimetres.finds.find(({ smallFind }) => smallFind === 104)?.thicknessMm).toBe(420);
    const unused = read(giveColumn(NO_ANSWERS, 10, null));
    expect(unused.finds.some(({ note }) => note !== undefined)).toBe(false);
  });

  test('the lead leaves a row out, and it is still counted', () => {
    const [twice] = whole.questions.filter(({ reason }) => reason === 'number-repeated');
    if (twice === undefined) throw new Error('no number twice');
    const { counts, rows } = read(answer(NO_ANSWERS, twice, LEAVE_ROW_OUT, 'cell'));
    expect(counts).toMatchObject({ rows: 44, leftOut: 3 });
    expect(rows.find(({ row }) => row === twice.row)?.reason).toBe('you left it out');
  });
});

describe('lists of other shapes', () => {
  test.each([
    {
      name: 'semicolons and decimal commas',
      list: 'Fundnr;Befund;Objekt;Material;Gewicht (g);Länge (mm);Breite (mm);Dicke (mm);Datierung\n1;12;Abschlag;Silex;18,5;52;38;9;Spätneolithikum',
      massG: 18.5,
      lengthMm: 52,
      type: 'flake',
    },
    {
      name: 'tabs, centimetres in the header',
      list: 'N° objet\tUS\tDésignation\tMatière\tPoids (g)\tLongueur (cm)\tLargeur (cm)\tÉpaisseur (cm)\n1\t12\tGrattoir\tSilex\t25\t4,6\t3,7\t1,2',
      massG: 25,
      lengthMm: 46,
      type: 'end-scraper',
    },
    {
      name: 'a title above the names',
      list: 'Finds of the week,,,,,,\n,,,,,,\nFind no,Context,Object,Material,Size,Weight g,Notes\n1,12,flint flake,,52 x 38 x 9 mm,18,',
      massG: 18,
      lengthMm: 52,
      type: 'flake',
    },
    {
      name: 'kilograms and metres in the header',
      list: 'sf,context,object,material,weight (kg),length (m),width (m),thickness (m)\n1,12,hammerstone,quartzite,0.408,0.082,0.071,0.058',
      massG: 408,
      lengthMm: 82,
      type: 'hammerstone',
    },
  ])('$name', ({ list, massG, lengthMm, type }) => {
    const { finds, counts } = read(NO_ANSWERS, list);
    expect(finds[0]).toMatchObject({ massG, lengthMm, attributes: { 'object-type': type } });
    expect(counts.found + counts.asked).toBe(1);
  });

  test('centimetres that no header names are told from the values', () => {
    const list = `sf,context,object,length,width,thickness\n${Array.from({ length: 8 }, (_, index) => `${index + 1},12,scraper,4.${index},3.${index},1.1`).join('\n')}`;
    const { columns, finds } = read(NO_ANSWERS, list);
    expect(columns.find(({ guess }) => guess === 'length-mm')).toMatchObject({
      unit: 'cm',
      unitFrom: 'values',
    });
    expect(finds[2]?.lengthMm).toBe(42);
  });

  test('a last column without a name is a column, and its cells stay in the row', () => {
    const { columns, rows, counts } = read(
      NO_ANSWERS,
      'SF,Context,Object\n1,12,flake,red\n2,12,flake,blue\n3,12,blade,red',
    );
    expect(columns.map(({ header, guess }) => [header, guess]).at(-1)).toEqual(['', null]);
    expect(rows[0]?.cells).toEqual(['1', '12', 'flake', 'red']);
    expect(counts).toMatchObject({ rows: 3, found: 3 });
  });

  test.each([
    { name: 'without column names', head: '', from: 1 },
    {
      name: 'with column names in words we do not have',
      head: 'Fyndnr,Kontext,Vikt,Sak,Ämne,Läng,Bredd,Tjock\n',
      from: 2,
    },
  ])(
    '$name the numbers are told by their place, and the guess is said to be little sure',
    ({ head, from }) => {
      const list = `${head}1,204,18,flake,flint,52,38,9\n2,205,7.7,blade,flint,68,19,6\n3,205,3.4,pin,bone,90,7,5`;
      const { columns, rows, counts } = read(NO_ANSWERS, list);
      expect(columns.map(({ guess }) => guess)).toEqual([
        'small-find',
        'context',
        'mass-g',
        'object-type',
        'material',
        'length-mm',
        'width-mm',
        'thickness-mm',
      ]);
      expect(
        columns
          .filter(({ guess }) => guess !== 'object-type' && guess !== 'material')
          .every(({ sureness }) => sureness < 0.8),
      ).toBe(true);
      expect(rows[0]).toMatchObject({
        row: from,
        find: { smallFind: 1, context: 204, lengthMm: 52, widthMm: 38, thicknessMm: 9, massG: 18 },
      });
      expect(counts).toMatchObject({ rows: 3, found: 3 });
    },
  );

  test.each([
    { written: '03-Apr', taken: null },
    { written: '12/13', taken: '12' },
    { written: '212a', taken: '212' },
    { written: '12.5', taken: '12' },
  ])('"$written" is no one context, and it is asked', ({ written, taken }) => {
    const { questions } = read(NO_ANSWERS, `SF,Context,Object\n1,11,flake\n2,${written},flake`);
    expect(questions).toMatchObject([
      { row: 3, field: 'context', reason: 'number-unclear', received: written, taken },
    ]);
  });

  test.each(['(212)', '<212>', 'ctx 212', 'US212', '212.', '[212]'])('"%s" is context 212', (written) => {
    expect(read(NO_ANSWERS, `SF,Context,Object\n1,${written},flake`).finds[0]?.context).toBe(212);
  });

  test('a column of names of people is known and goes nowhere', () => {
    const { columns, finds } = read(NO_ANSWERS, 'SF,Context,Object,Found by\n1,12,flake,J. Nobody');
    expect(columns.at(-1)?.guess).toBe('person');
    expect(JSON.stringify(finds)).not.toContain('Nobody');
  });

  test('a quote mark that closes nothing swallows no rows', () => {
    const { counts, questions } = read(
      NO_ANSWERS,
      'SF,Context,Object,Notes\n1,12,flake,"two flakes\n2,12,flake,\n3,12,flake,"whole"',
    );
    expect(counts).toMatchObject({ rows: 3, leftOut: 0 });
    expect(questions.find(({ reason }) => reason === 'loose-quote')?.row).toBe(2);
  });

  test.each([
    { list: '' },
    { list: '\uFEFF' },
    { list: '\n\n' },
    { list: 'SF,Context' },
    { list: 'no table at all' },
  ])('nothing to read in $list is no failure', ({ list }) => {
    expect(read(NO_ANSWERS, list).finds).toEqual([]);
  });
});
