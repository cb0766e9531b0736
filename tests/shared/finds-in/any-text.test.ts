import { array, assert, constantFrom, property, string, tuple } from 'fast-check';
import { expect, test } from 'vitest';
import {
  answer,
  FIELDS,
  giveColumn,
  NO_ANSWERS,
  prepareFindsIn,
  readFindsIn,
  writeFindsTable,
  writeSite,
  siteHead,
} from '../../../shared/finds-in/index.ts';
import { readSite } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import { demoWords } from './demo-words.ts';

const { vocabulary } = demoLibrary;
const given = { vocabulary, words: demoWords, prepared: prepareFindsIn(vocabulary, demoWords) };
const SEED = 20261129;

const odd = constantFrom(
  '1',
  '204',
  'flake',
  'flint',
  '"',
  '""',
  '=A1',
  '-',
  '?',
  'c. 3',
  '4 cm',
  '',
  ' ',
  'Neo?',
  '(2)',
  '1,5',
  'null',
  'x',
  '#REF!',
  '🦴',
  '99999999',
);
const table = tuple(constantFrom(',', ';', '\t'), array(array(odd, { maxLength: 9 }), { maxLength: 7 })).map(
  ([delimiter, rows]) =>
    ['SF', 'Context', 'Object', 'Material', 'Wt', 'L', 'W', 'Th', 'Notes'].join(delimiter) +
    rows.map((row) => `\n${row.join(delimiter)}`).join(''),
);

test('any text at all is read: the counts add up, and what is taken is told', () => {
  assert(
    property(string({ unit: 'binary', maxLength: 120 }), (text) => {
      const { counts, rows, questions } = readFindsIn(text, given);
      expect(counts.found + counts.asked + counts.leftOut).toBe(counts.rows);
      expect(
        rows.every(
          ({ outcome, find, questions: own }) =>
            outcome !== 'asked' || find !== null || own.some(({ isBlocking }) => isBlocking),
        ),
      ).toBe(true);
      expect(questions.every(({ asked }) => asked.length > 0)).toBe(true);
    }),
    { seed: SEED, numRuns: 100 },
  );
});

test('odd tables, any columns and any answers: what is ready reads back as it was', () => {
  assert(
    property(
      table,
      array(tuple(constantFrom(0, 1, 2, 3, 4, 8), constantFrom(...FIELDS, null)), { maxLength: 3 }),
      array(odd, { maxLength: 6 }),
      (text, columns, values) => {
        let answers = columns.reduce((held, [column, field]) => giveColumn(held, column, field), NO_ANSWERS);
        for (const [index, value] of values.entries()) {
          const question = readFindsIn(text, { ...given, answers }).questions[index];
          if (question !== undefined)
            answers = answer(answers, question, value, index % 2 === 0 ? 'cell' : 'equal');
        }
        const { finds, counts } = readFindsIn(text, { ...given, answers });
        expect(counts.found + counts.asked + counts.leftOut).toBe(counts.rows);
        const csv = writeFindsTable(finds);
        const { value, problems } = readSite(
          's.yaml',
          writeSite(siteHead('A list'), finds),
          [{ file: 's.csv', text: csv }],
          vocabulary,
        );
        expect(problems.filter(({ grade }) => grade === 'error')).toEqual([]);
        const order = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);
        expect((value?.pits.flatMap((pit) => pit.finds) ?? []).toSorted(order)).toEqual(
          finds.toSorted(order),
        );
        expect(csv).not.toMatch(/(?:^|,)"?[=+@-]/m);
      },
    ),
    { seed: SEED, numRuns: 100 },
  );
});
