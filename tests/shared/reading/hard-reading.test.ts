import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { blockSchemas } from '../../../shared/activities/index.ts';
import { checkLesson, compileLesson } from '../../../shared/compile/index.ts';
import { READ_KEYS } from '../../../shared/lesson/index.ts';
import { tradeWords } from '../../../shared/library/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

const lessonOf = (prose: string, bands: string, head = ''): string =>
  `---\ntitle: One\nsite: wendle-marsh\nbands: ${bands}\nminutes: 20\n${head}---\n${prose}\n`;

const cautionsOf = (text: string) =>
  checkLesson('one.md', text, demoLibrary, '1').problems.filter(({ code }) => code === 'reading-hard');

/** A sentence of so many one-syllable words. */
const long = (words: number): string => `The men ${'dug '.repeat(words - 3)}down.`;

describe('a sentence that is long for a band', () => {
  test('is told at its own line and column, to its last word', () => {
    const text = lessonOf(`Look here.\n\n> See *this*: yes. ${long(13)} Why?`, '[7-9]');
    const [caution, more] = cautionsOf(text);
    expect(more).toBeUndefined();
    expect(caution).toMatchObject({ grade: 'caution', from: { line: 9, column: 20 } });
    expect(text.slice(caution?.from.offset, caution?.to.offset)).toBe(long(13).slice(0, -1));
    expect(caution?.expected).toContain('at most 12 words');
    expect(caution?.expected).toContain('ages 7-9 read');
    expect(caution?.received).toBe('13 words');
    expect(caution?.mend).toMatch(/split it.+sees no meaning.+read-aloud/);
  });

  test.each([
    ['[4-5]', 8],
    ['[5-7]', 8],
    ['[7-9]', 12],
    ['[9-11]', 16],
    ['[11-14]', 20],
    ['[14-16]', 24],
    ['[9-11, 7-9]', 12],
    ['[9-11, 11-14]', 16],
  ])('for %s is longer than %i words', (bands, most) => {
    expect(cautionsOf(lessonOf(long(most), bands))).toEqual([]);
    expect(cautionsOf(lessonOf(long(most + 1), bands))).toHaveLength(1);
  });

  test('the youngest band that it is hard for is named', () => {
    expect(cautionsOf(lessonOf(long(14), '[9-11, 7-9]'))[0]?.expected).toContain('ages 7-9');
    expect(cautionsOf(lessonOf(long(30), '[9-11, 11-14]'))[0]?.expected).toContain('ages 9-11');
  });

  test('in a block it is told where it stands, in quotes or on lines of its own', () => {
    const block = (why: string): string =>
      lessonOf(
        `\`\`\`order\ntitle: One\nsteps:\n  - { id: a, name: Find it }\n  - { id: b, name: Chip it, must-follow: [a] }\n  - id: c\n    name: Rub it\n    must-follow: [b]\n    why: ${why}\nminutes: 9\n\`\`\``,
        '[7-9]',
      );
    for (const why of [`"Go. ${long(13)}"`, `Go. ${long(13)}`, `>-\n      Go.\n      ${long(13)}`]) {
      const text = block(why);
      const [caution, more] = cautionsOf(text);
      expect(more).toBeUndefined();
      expect(text.slice(caution?.from.offset, caution?.to.offset)).toBe(long(13).slice(0, -1));
    }
  });

  test('eight are told, and the eighth says how many more there are', () => {
    const cautions = cautionsOf(lessonOf(Array.from({ length: 20 }, () => long(13)).join(' '), '[7-9]'));
    expect(cautions.filter(({ received }) => received.includes('words'))).toHaveLength(cautions.length);
    expect(cautions).toHaveLength(8);
    expect(cautions.at(-1)?.received).toBe('13 words; 12 more sentences are as long');
  });

  test('a hard word in it is named; a name and a word of the trade are not', () => {
    const of = (word: string): string | undefined =>
      cautionsOf(lessonOf(`They ${'dug '.repeat(12)}${word} down.`, '[7-9]'))[0]?.mend;
    expect(of('extraordinary')).toContain('a shorter word for "extraordinary"');
    expect(of('Extraordinary')).not.toContain('a shorter word');
    expect(tradeWords(demoLibrary)).toContain('hammerstone');
    expect(of('hammerstone')).not.toContain('a shorter word');
  });

  test('where an adult reads it out nothing is said, and the plan says so', () => {
    const text = lessonOf(long(40), '[7-9]', 'read-aloud: true\n');
    expect(cautionsOf(text)).toEqual([]);
    expect(compileLesson('one.md', text, demoLibrary, '1').plan?.readAloud).toBe(true);
    expect(cautionsOf(lessonOf(long(40), '[7-9]', 'read-aloud: false\n'))).toHaveLength(1);
  });
});

describe('a whole text that is hard for a band', () => {
  // Twelve sentences of ten words, eleven of 15 syllables and one of 16 (Kincaid and others 1975 for the grade).
  const sentence = 'The ladies put seven little apples under the water there.';
  const even = 'The ladies put seven little apples by the water there.';
  const text = (bands: string): string => lessonOf(`${`${even} `.repeat(11)}${sentence}`, bands);

  test('is told at its hardest sentence, with the measure, the target and what it is', () => {
    const [caution, more] = cautionsOf(text('[9-11]'));
    expect(more).toBeUndefined();
    expect(caution?.expected).toContain('a Flesch–Kincaid grade of at most 5.5 for what ages 9-11 read');
    const grade = 0.39 * 10 + 11.8 * ((11 * 15 + 16) / 120) - 15.59;
    expect(caution?.received).toContain(`grade ${grade.toFixed(1)} over 120 words`);
    expect(text('[9-11]').slice(caution?.from.offset, caution?.to.offset)).toBe(sentence.slice(0, -1));
  });

  test('is not told of an older band, nor of fewer than a hundred words', () => {
    expect(cautionsOf(text('[11-14]'))).toEqual([]);
    expect(cautionsOf(lessonOf(`${sentence} `.repeat(9), '[9-11]'))).toEqual([]);
  });

  test('words of the trade count as the rest of the text does', () => {
    const plain = 'The men dug down and the rain came in again. '.repeat(10);
    const grade = (word: string): number =>
      cautionsOf(lessonOf(`${plain}${`They dug ${word} and ${word} up. `.repeat(12)}`, '[5-7]')).filter(
        ({ received }) => received.includes('grade'),
      ).length;
    expect(grade('extraordinary')).toBe(1);
    expect(grade('hammerstone')).toBe(0);
  });
});

test('no demo lesson is hard for its bands', () => {
  expect(demoLessons.length).toBeGreaterThanOrEqual(12);
  expect(demoLessons.flatMap(({ text }) => cautionsOf(text))).toEqual([]);
});

test('long rows of stops, letters and brackets are read in good time', () => {
  for (const odd of ['.', 'a', '.a', '!) ', "a'", '[', 'a-', '1,', 'aeiou'])
    for (const bands of ['[4-5]', '[7-9, 14-16]']) {
      const text = lessonOf(odd.repeat(Math.floor(150_000 / odd.length)), bands);
      const before = process.threadCpuUsage();
      checkLesson('odd.md', text, demoLibrary, '1');
      const { user, system } = process.threadCpuUsage(before);
      expect((user + system) / 1000, odd).toBeLessThan(300);
    }
});

test('every key of a block that holds words is either read by pupils or known not to be', () => {
  // Ids, words of the record and of the model, and what only the lead reads.
  const notRead = [
    'id',
    'vouched',
    'finds',
    'pit',
    'leave-out',
    'by',
    'trays',
    'holds',
    'find',
    'tray',
    'must-follow',
    'is',
    'edge',
    'exposure',
    'drawing',
    'of',
    'source',
    'for',
    'form',
    'stone',
    'grinder',
    'preform',
    'extent',
    'finish',
    'skill',
    'wood',
    'axe',
    'ask',
    'among',
    'levers',
    'goods',
    'aim',
    'traders',
    'wants',
    'door',
    'returns',
    'for-swapping',
    'one',
    'many',
    'pits',
    'kinds',
    '4-5',
    '5-7',
    '7-9',
    '9-11',
    '11-14',
    '14-16',
  ];
  const keys = new Set<string>();
  const walk = (schema: unknown, key: string): void => {
    if (typeof schema !== 'object' || schema === null) return;
    const node = schema as Readonly<Record<string, unknown>>;
    if (node['type'] === 'string') keys.add(key);
    for (const [name, inner] of Object.entries(node)) {
      if (name === 'properties') for (const [own, at] of Object.entries(inner as object)) walk(at, own);
      else walk(inner, key);
    }
  };
  for (const schema of Object.values(blockSchemas))
    walk(z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }), '');
  expect(keys.size).toBeGreaterThan(20);
  expect([...keys].filter((key) => !READ_KEYS.has(key) && !notRead.includes(key))).toEqual([]);
});
