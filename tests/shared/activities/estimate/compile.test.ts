import { describe, expect, test } from 'vitest';
import { quantityIds } from '../../../../shared/making/index.ts';
import { compiled, estimated, library, told } from './compiled.ts';

describe('what is asked about', () => {
  test('size and stone come from the find', () => {
    const { request, find } = estimated('of: axe-mass\nfor: P2-115');
    expect(request).toEqual({ lengthMm: 168, widthMm: 74, thicknessMm: 46, stone: 'flint' });
    expect(find).toMatchObject({ id: 'P2-115', pit: 'P2', smallFind: 115 });
  });

  test('what the lead writes stands before what the find has', () => {
    const { request } = estimated('of: grinding-hours\nfor: { find: P7-165, length-mm: 150, extent: edge }');
    expect(request).toEqual({
      lengthMm: 150,
      widthMm: 58,
      thicknessMm: 34,
      stone: 'flint',
      extent: 'edge',
    });
  });

  test('a broken find without its whole length is a caution, and is reckoned as it lies', () => {
    const lesson = compiled('of: grinding-hours\nfor: P7-165');
    expect(told(lesson)).toEqual([
      '12 caution find-broken: P7-165, which is broken: 104 mm is what is left of its length',
    ]);
    expect(lesson.plan).not.toBeNull();
  });

  test('a stone that is pecked starts from a pecked blank', () => {
    const { request } = estimated(
      'of: grinding-hours\nfor: { stone: dolerite, form: pecked-celt, length-mm: 150, width-mm: 60, thickness-mm: 42 }',
    );
    expect(request.preform).toBe('pecked');
  });

  test.each([
    { block: 'of: axe-hours\nfor: P7-999', fault: '12 error find-unknown: "P7-999"' },
    {
      block: 'of: axe-hours\nfor: P3-124',
      fault: '12 error beyond-model: P3-124, of bone',
    },
    {
      block: 'of: axe-hours\nfor: { find: P7-165, length-mm: 900 }',
      fault: '12 error beyond-model: 900',
    },
    {
      block: 'of: axe-hours\nfor: { find: P7-165, length-mm: 150, stone: flunt }',
      fault: '12 error word-unknown: "flunt"',
    },
    { block: 'of: felling-minutes', fault: '11 error key-missing: none' },
    {
      block: 'of: house-stakes-hours\nfor: { diameter-cm: 8, stakes: 2.5 }',
      fault: '12 error value-unfit: 2.5',
    },
    {
      block: 'of: knapping-minutes\nfor: { stone: dolerite, form: pecked-celt }',
      fault: '11 error ask-unfit: "knapping-minutes" is exactly 0 for this stone and this work',
    },
    {
      block: 'of: axe-mass\nfor: { find: P7-165, length-mm: 150 }\nask: choose',
      fault: '13 error ask-unfit: "choose" for "axe-mass"',
    },
    {
      block: 'of: axe-hours\nfor: { find: P7-165, length-mm: 150 }\nask: choose\namong: [story, wekend]',
      fault: '14 error word-unknown: "wekend"',
    },
    {
      block:
        'of: axe-hours\nfor: { find: P7-165, length-mm: 150 }\nask: choose\namong: [lesson, school-week, school-year]',
      fault: '14 error ask-unfit: "a school week" in the middle',
    },
    {
      block: 'of: axe-hours\nfor: { find: P7-165, length-mm: 150 }\nask: { 9-11: number, 4-5: choose }',
      fault: '13 caution ask-unfit: "4-5"',
    },
  ])('$fault', ({ block, fault }) => {
    expect(told(compiled(block))).toEqual([fault]);
  });

  test('without figures the block says so, and the rest of the lesson is read', () => {
    const lesson = compiled('of: hafting-hours', '[9-11]', 'seed', { ...library, making: null });
    expect(told(lesson)).toEqual(['11 error figures-missing: none that can be read']);
  });
});

describe('how it is asked', () => {
  test('each band in its way, the youngest first', () => {
    const { asks } = estimated('of: hafting-hours', '[5-7, 7-9, 9-11, 11-14]');
    expect(asks).toEqual([
      { how: 'choose', bands: ['5-7', '7-9'] },
      { how: 'number', bands: ['9-11'] },
      { how: 'interval', bands: ['11-14'] },
    ]);
  });

  test('a mass is a number for those who would choose among times', () => {
    expect(estimated('of: axe-mass\nfor: P2-115', '[5-7]').asks).toEqual([{ how: 'number', bands: ['5-7'] }]);
  });

  test('the right comparison is never in the middle, and lies on either side of it', () => {
    const places = new Set<number>();
    for (let seed = 0; seed < 40; seed += 1) {
      const { choices } = estimated('of: hafting-hours', '[5-7]', `${seed}`);
      expect(choices).toHaveLength(3);
      // A night's sleep, 10 hours, is nearest to the 12 hours of a haft.
      places.add(choices.findIndex(({ id }) => id === 'night'));
    }
    expect(places).toEqual(new Set([0, 2]));
  });

  test('the answer lies on either side of its line', () => {
    const sides = new Set(
      Array.from({ length: 20 }, (_, seed) => {
        const { line, record } = estimated('of: hafting-hours', '[9-11]', `${seed}`);
        return Math.sign(record.middle - Math.sqrt(line.from * line.to));
      }),
    );
    expect(sides).toEqual(new Set([-1, 1]));
  });

  test('a share is asked in hundredths, and its line ends at a hundred', () => {
    const { record, line } = estimated('of: waste-share');
    expect(record.middle).toBe(80);
    expect(line.to).toBe(100);
  });
});

const SUBJECTS: Readonly<Record<string, string>> = {
  'axes-in-a-nodule': '{ find: P2-115, nodule-kg: 6 }',
  'pecking-hours': '{ stone: dolerite, form: pecked-celt }',
};
const needsTree = (quantity: string): boolean => /felling|stakes/.test(quantity);

test.each(quantityIds)('%s can be asked', (quantity) => {
  const tree = '{ diameter-cm: 20, stakes: 40 }';
  const subject = SUBJECTS[quantity] ?? (needsTree(quantity) ? tree : 'P2-115');
  const lesson = compiled(`of: ${quantity}\nfor: ${subject}`, '[9-11, 11-14]');
  expect(lesson.problems.filter(({ grade }) => grade === 'error')).toEqual([]);
  const activity = lesson.plan?.activities[0];
  if (activity?.kind !== 'estimate') throw new Error('no estimate');
  expect(activity.question).toMatch(/\?$/);
});
