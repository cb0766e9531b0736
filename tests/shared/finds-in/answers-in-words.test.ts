import { describe, expect, test } from 'vitest';
import { answer, NO_ANSWERS, readFindsIn, type Answers } from '../../../shared/finds-in/index.ts';
import type { Find } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import { demoWords } from './demo-words.ts';

const LIST = `SF,Pit,Context,Object,Material,L (mm),W (mm),Th (mm),Wt (g)
1,P1,,?,Flint,=1+1,34,11,16
2,P1,102,Scraper,Flint,40,34,11,16
`;
const given = { vocabulary: demoLibrary.vocabulary, words: demoWords };

const said = (field: 'context' | 'object-type' | 'length-mm' | 'mass-g', value: string): Answers =>
  answer(NO_ANSWERS, { row: 2, field, received: '' }, value, 'cell');

function readWith(answers: Answers) {
  const { rows } = readFindsIn(LIST, { ...given, answers });
  const row = rows.find((each) => each.row === 2);
  if (row === undefined) throw new Error('row 2 is gone');
  return row;
}

const askedOf = (answers: Answers, field: string) =>
  readWith(answers).questions.find((question) => question.field === field);

/** Row 2 with everything it waits for answered, and one of the answers in other words. */
const findWith = (field: Parameters<typeof said>[0], value: string): Find | null => {
  const cells = {
    ...said('context', '101').cells,
    ...said('object-type', 'flake').cells,
    ...said('length-mm', '44').cells,
    ...said(field, value).cells,
  };
  return readWith({ ...NO_ANSWERS, cells }).find;
};

describe('an answer is taken in the words a lead would write', () => {
  test.each([
    ['flake', 'flake'],
    ['end-scraper', 'end-scraper'],
    // As the Bench itself names it.
    ['scraper', 'end-scraper'],
    ['Scrapers', 'end-scraper'],
    ['Kratzer', 'end-scraper'],
  ])('the object %j is %j', (value, id) => {
    expect(findWith('object-type', value)?.attributes['object-type']).toBe(id);
  });

  test.each([
    ['44', 44],
    ['44 mm', 44],
    ['4.4 cm', 44],
    ['4,4 cm', 44],
  ])('the length %j is %d mm', (value, lengthMm) => {
    expect(findWith('length-mm', value)?.lengthMm).toBe(lengthMm);
  });

  test.each([
    ['101', 101],
    ['(101)', 101],
    ['ctx 101', 101],
  ])('the context %j is %d', (value, context) => {
    expect(findWith('context', value)?.context).toBe(context);
  });

  test('a weight may be said in kilograms, and a length not', () => {
    expect(findWith('mass-g', '0.016 kg')?.massG).toBe(16);
    const cells = { ...said('object-type', 'flake').cells, ...said('length-mm', '44 kg').cells };
    const asked = askedOf({ ...NO_ANSWERS, cells }, 'length-mm');
    expect(asked?.asked).toContain('"44 kg"');
  });
});

describe('an answer that is no answer is asked again, with something to press', () => {
  test('a word with two meanings offers both', () => {
    const question = askedOf(said('object-type', 'arrowhead'), 'object-type');
    expect(question?.isBlocking).toBe(true);
    expect(question?.proposals.map(({ value }) => value)).toEqual(['oblique-arrowhead', 'leaf-arrowhead']);
  });

  test('a word nobody knows offers what it may be', () => {
    const question = askedOf(said('object-type', 'qwxyz'), 'object-type');
    expect(question?.asked).toContain('"qwxyz"');
    expect(question?.proposals.length).toBeGreaterThan(3);
  });

  test('a context that is no number is told of', () => {
    const list = LIST.replace('2,P1,102', '2,P1,102 or 103');
    const answers = answer(NO_ANSWERS, { row: 3, field: 'context', received: '' }, 'below', 'cell');
    const { rows } = readFindsIn(list, { ...given, answers });
    const question = rows.find(({ row }) => row === 3)?.questions.find(({ field }) => field === 'context');
    expect(question?.asked).toContain('"below"');
  });
});
