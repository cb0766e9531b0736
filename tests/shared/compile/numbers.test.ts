import { describe, expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { numberLimits } from '../../../shared/curriculum/index.ts';
import { numeralsOf } from '../../../shared/lesson/index.ts';
import { BANDS } from '../../../shared/library/index.ts';
import { tellAmount } from '../../../src/islands/estimate-view.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

const lessonOf = (kind: string, block: string, bands: string): string =>
  `---\ntitle: One\nsite: wendle-marsh\nbands: ${bands}\nminutes: 60\n---\n\`\`\`${kind}\ntitle: One\n${block}\nminutes: 8\n\`\`\`\n`;

/** Where each number beyond a band is told, as it is told. */
const told = (kind: string, block: string, bands: string): readonly string[] => {
  const text = lessonOf(kind, block, bands);
  const { problems } = compileLesson('one.md', text, demoLibrary, '1');
  expect(problems.filter(({ grade }) => grade === 'error')).toEqual([]);
  return problems
    .filter(({ code }) => code === 'number-beyond-band')
    .map(({ from, to, expected, received, mend }) => {
      expect(mend).not.toBe('');
      return `${text.slice(from.offset, to.offset)}: ${expected}; ${received}`;
    });
};

const PITS = 'ask: places\npits: [P3, P4]\nkinds: [pig-jaw, hazelnut-shells, chalk-disc, cattle-bone]';
const CHANCE = 'ask: chance\npits: [P1, P2, P3, P4, P5, P6, P7, P8, P9]';
const AXE = 'of: grinding-hours\nfor: { find: P7-165, length-mm: 150 }';
const STEPS = (why: string): string =>
  `steps:\n  - { id: a, name: Find it }\n  - { id: b, name: Chip it, must-follow: [a], why: ${why} }\n  - { id: c, name: Rub it, must-follow: [b] }`;
const world = (pots: number, worth: number): string =>
  `world:\n  aim: axe\n  bundle: 2\n  goods: { antler: , flint: , grain: , pot: , axe: }\n  you:\n    holds: { antler: 1 }\n    wants: { antler: 1, grain: 3, flint: 4, pot: 5, axe: ${worth} }\n    for-swapping: [grain, flint]\n  traders:\n    ama:\n      holds: { flint: 1, grain: 1 }\n      wants: { antler: 5, flint: 2, grain: 2 }\n    bero:\n      holds: { flint: 1, pot: ${pots} }\n      wants: { grain: 4, flint: 3, pot: 1 }\n    cale:\n      holds: { axe: 1 }\n      wants: { flint: 6, axe: 5, pot: 2 }`;

describe('numbers beyond a band', () => {
  test('limits are those of the steps in the band', () => {
    const limits = BANDS.map((band) => numberLimits(demoLibrary.curricula, band));
    expect(limits.map((each) => each?.wholeNumbersTo)).toEqual([
      10, 100, 1000, 1_000_000, 10_000_000, 10_000_000,
    ]);
    expect(limits.map((each) => [...(each?.ideas ?? [])].length)).toEqual([0, 1, 2, 5, 5, 5]);
    expect(numberLimits({ steps: [] }, '7-9')).toBeNull();
  });

  test('pieces of a kind are told at the kind that has most', () => {
    expect(told('compare', PITS, '[4-5]')).toEqual([
      'hazelnut-shells: whole numbers up to 10 at ages 4-5 (our judgement); 31 pieces of one kind in a pit',
    ]);
    expect(told('compare', PITS, '[5-7]')).toEqual([]);
    expect(told('compare', PITS.replace('hazelnut-shells, ', ''), '[4-5]')).toEqual([]);
  });

  test('likeness between 0 and 1 needs decimals; a thousand shuffles need a thousand', () => {
    expect(told('compare', CHANCE, '[7-9]')).toEqual([
      'chance: no decimals at ages 7-9 (our judgement); 1 as a measure of how alike',
    ]);
    expect(told('compare', `${CHANCE}\nby: brainerd-robinson`, '[7-9]')).toEqual([]);
    expect(told('compare', `${CHANCE}\nby: brainerd-robinson`, '[5-7]')).toHaveLength(2);
    expect(told('compare', CHANCE, '[9-11]')).toEqual([]);
  });

  test('the line of an estimate is told where a number is asked, and not where one chooses', () => {
    const minutes = 'of: knapping-minutes\nfor: { find: P7-165, length-mm: 150 }';
    expect(told('estimate', `${minutes}\nask: number\nlevers: []`, '[7-9]').join()).toMatch(
      /^$|at the end of the line/,
    );
    expect(told('estimate', `${AXE}\nask: number\nlevers: []`, '[5-7]').join()).toContain(
      'at the end of the line',
    );
    expect(told('estimate', `${AXE}\nask: choose\nlevers: []`, '[5-7]')).toEqual([]);
    expect(told('estimate', `${AXE}\nask: { 5-7: choose, 9-11: number }\nlevers: []`, '[5-7, 9-11]')).toEqual(
      [],
    );
  });

  test('amounts are whole for those who know no decimals, and the plan says how far they count', () => {
    const wholeTo = (bands: string): number | undefined => {
      const { plan } = compileLesson('x.md', lessonOf('estimate', AXE, bands), demoLibrary, '1');
      const [activity] = plan?.activities ?? [];
      return activity?.kind === 'estimate' ? activity.wholeTo : -1;
    };
    expect(['[5-7]', '[9-11, 7-9]', '[9-11]'].map(wholeTo)).toEqual([100, 1000, undefined]);
    expect(tellAmount({ wholeTo: 1000 }, 9.3)).toBe('9');
    expect(tellAmount({ wholeTo: 1000 }, 0.4)).toBe('0.4');
    expect(tellAmount({}, 9.3)).toBe('9.3');
  });

  test('an answer that whole numbers cannot tell is said to need decimals', () => {
    const small = 'of: house-stakes-hours\nfor: { stakes: 40, diameter-cm: 5 }\nask: choose\nlevers: []';
    const [first] = told('estimate', small, '[7-9]');
    expect(first).toMatch(/no decimals at ages 7-9.*0\.\d+ in the answer/);
    expect(told('estimate', small, '[9-11]')).toEqual([]);
  });

  test('sizes to change are told at the levers', () => {
    expect(told('estimate', `${AXE}\nask: choose\nlevers: [size, stone]`, '[5-7]')).toEqual([
      '[size, stone]: whole numbers up to 100 at ages 5-7 (our judgement); 330 in what may be changed afterwards',
    ]);
    expect(told('estimate', `${AXE}\nask: choose\nlevers: [stone]`, '[5-7]')).toEqual([]);
  });

  test('what is held and what it is worth are told where they are written', () => {
    expect(told('barter', world(1, 9), '[5-7]')).toEqual([]);
    expect(told('barter', world(12, 9), '[5-7]')).toEqual([]);
    expect(told('barter', world(12, 9), '[4-5]')).toEqual([
      '12: whole numbers up to 10 at ages 4-5 (our judgement); 12 of one thing in a hand',
    ]);
    expect(told('barter', world(1, 200), '[5-7]')).toEqual([
      '200: whole numbers up to 100 at ages 5-7 (our judgement); 200 as a worth',
    ]);
    // Where only the order of wants is shown, worths are read by nobody.
    expect(told('barter', world(1, 200).replace('bundle: 2', 'bundle: 1'), '[5-7]')).toEqual([]);
  });

  test('numbers in the words of a block are told at their place', () => {
    const inWords = (why: string, bands: string) => told('order', STEPS(`"${why}"`), bands);
    expect(inWords('It took 1,200 blows.', '[7-9]')).toEqual([
      '1,200: whole numbers up to 1,000 at ages 7-9 (our judgement); "1,200"',
    ]);
    expect(inWords('It took 1,200 blows.', '[9-11]')).toEqual([]);
    expect(inWords('It is 4.5 cm thick.', '[7-9]')).toHaveLength(1);
    expect(inWords('It is 4.5 cm thick.', '[9-11]')).toEqual([]);
    expect(inWords('In 3/4 of them.', '[4-5]')).toHaveLength(1);
    expect(inWords('In 3/4 of them.', '[5-7]')).toEqual([]);
    expect(inWords('In 2/5 of them.', '[5-7]')).toHaveLength(1);
    expect(inWords('In 2/5 of them.', '[7-9]')).toEqual([]);
    expect(inWords('In 40% of them.', '[7-9]')).toHaveLength(1);
    expect(inWords('In 40 per cent of them.', '[9-11]')).toEqual([]);
    // What only names is not a number to be read.
    expect(inWords('As P7-1652 and A1200 say, from P7-165.', '[5-7]')).toEqual([]);
  });

  test('no demo lesson has a number its bands have not met', () => {
    const codes = demoLessons.flatMap(({ id, file, text }) =>
      compileLesson(file, text, demoLibrary, id).problems.map(({ code }) => code),
    );
    expect(codes).toEqual([]);
  });
});

describe('numbers in a text', () => {
  test.each([
    ['12 pits', ['12 whole 12']],
    ['4.5 cm, 1,234.5 g.', ['4.5 decimals 4', '1,234.5 decimals 1234']],
    [
      '1/2 and 3/8 and ¾ and ⅔',
      ['1/2 halves-quarters 2', '3/8 fractions 8', '¾ halves-quarters 0', '⅔ fractions 0'],
    ],
    ['30% or 5 per cent', ['30% percent 30', '5 per cent percent 5']],
    ['−4 degrees', ['−4 negative-numbers 4']],
    ['P3, E1, 3rd, P7-165, 7a', []],
    ['in 2019.', ['2019 whole 2019']],
  ])('%s', (text, expected) => {
    expect(
      numeralsOf({ text, offset: 3 }).map(({ text: said, form, value }) => `${said} ${form} ${value}`),
    ).toEqual(expected);
    for (const { from, to, text: said } of numeralsOf({ text, offset: 3 }))
      expect(text.slice(from - 3, to - 3)).toBe(said);
  });
});
