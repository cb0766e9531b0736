import { expect, test } from 'vitest';
import { LONGEST_LESSON } from '../../../shared/lesson/index.ts';
import { BLOCK, HEAD, problemsOf, told } from './lesson-text.ts';

const grond = BLOCK.replace('ground', 'grond');
const indented = (text: string, by: string): string => text.replace(/^(?=.)/gm, by);

test.each([
  {
    name: 'in a head',
    text: HEAD.replace('minutes: 40', 'minutes: forty') + BLOCK,
    expected: ['value-unfit 5:10 "forty"'],
  },
  { name: 'in a block', text: HEAD + grond, expected: ['tray-unknown 12:17 "grond"'] },
  {
    name: 'after prose and an emoji',
    text: `${HEAD}Bones 🦴🦴\n\n${grond}`,
    expected: ['tray-unknown 14:17 "grond"'],
  },
  {
    name: 'after an emoji on its line',
    text: HEAD + grond.replace('[carved', '["🦴", carved'),
    expected: ['tray-unknown 12:9 "\\"🦴\\""', 'tray-unknown 12:23 "grond"'],
  },
  {
    name: 'after Windows line ends',
    text: (HEAD + grond).replaceAll('\n', '\r\n'),
    expected: ['tray-unknown 12:17 "grond"'],
  },
  {
    name: 'after a byte-order mark',
    text: `\uFEFF${HEAD}${grond}`,
    expected: ['tray-unknown 12:17 "grond"'],
  },
  {
    name: 'after both',
    text: `\uFEFF${(HEAD + grond).replaceAll('\n', '\r\n')}`,
    expected: ['tray-unknown 12:17 "grond"'],
  },
  {
    name: 'in prose',
    text: `${HEAD}A line.\n\nAn <b>old</b> pin.\n`,
    expected: ['html-refused 10:4 "<b>"', 'html-refused 10:10 "</b>"'],
  },
  { name: 'after a tab', text: `${HEAD}A\t<br> line.\n`, expected: ['html-refused 8:3 "<br>"'] },
  {
    name: 'in a block indented by two',
    text: HEAD + indented(grond, '  '),
    expected: ['tray-unknown 12:19 "grond"'],
  },
  {
    name: 'on the last line, without its end',
    text: `${HEAD}An <br>`,
    expected: ['html-refused 8:4 "<br>"'],
  },
  {
    name: 'at the end of a line of 5,000 characters',
    text: `${HEAD}${'a'.repeat(4996)}<br>`,
    expected: ['html-refused 8:4997 "<br>"'],
  },
  {
    name: 'of a key',
    text: HEAD + BLOCK.replace('minutes: 8', 'minutes: 8\nordred: true'),
    expected: ['key-unknown 14:1 "ordred"'],
  },
  {
    name: 'of a key in a flow',
    text: HEAD + BLOCK.replace('[carved, ', '[{ name: carved, hold: [carved] }, '),
    expected: ['key-unknown 12:25 "hold"'],
  },
  {
    name: 'in a block fenced with tildes',
    text: HEAD + grond.replaceAll('```', '~~~~'),
    expected: ['tray-unknown 12:17 "grond"'],
  },
  {
    name: 'in the second of two blocks',
    text: `${HEAD}${BLOCK}\n${grond}`,
    expected: ['tray-unknown 20:17 "grond"'],
  },
  { name: 'of an empty file', text: '', expected: ['file-empty 1:1 ""'] },
  { name: 'of a file of spaces', text: ' \n\t\n', expected: ['file-empty 1:1 ""'] },
  { name: 'of a file of one byte-order mark', text: '\uFEFF', expected: ['file-empty 1:1 ""'] },
  {
    name: 'of a file that is too long',
    text: HEAD + 'a'.repeat(LONGEST_LESSON),
    expected: ['file-too-long 1:1 ""'],
  },
  { name: 'of a head that is not there', text: 'Some text\n', expected: ['head-missing 1:1 ""'] },
  { name: 'of a head that is not closed', text: '---\ntitle: x\n', expected: ['head-unclosed 1:1 "---"'] },
  {
    name: 'of a block in a quotation',
    text: `${HEAD}> ${BLOCK.trim().replaceAll('\n', '\n> ')}\n`,
    expected: ['block-nested 8:3 ' + JSON.stringify(BLOCK.trim().replaceAll('\n', '\n> '))],
  },
])('the place of a fault $name', ({ text, expected }) => {
  expect(told(text)).toEqual(expected);
});

test.each([
  { name: 'Windows line ends', write: (text: string) => text.replaceAll('\n', '\r\n') },
  { name: 'a byte-order mark', write: (text: string) => `\uFEFF${text}` },
  { name: 'no line end at its end', write: (text: string) => text.trimEnd() },
  { name: 'an indented block', write: (text: string) => text.replace(BLOCK, indented(BLOCK, '   ')) },
  { name: 'tildes', write: (text: string) => text.replaceAll('```', '~~~') },
  { name: 'longer fences', write: (text: string) => text.replaceAll('```', '`````') },
  {
    name: 'an emoji in its title',
    write: (text: string) => text.replace('title: Six pits', 'title: Six pits 🦴'),
  },
])('a lesson with $name is as good as any', ({ write }) => {
  const text = write(HEAD + BLOCK);
  expect(text).not.toBe(HEAD + BLOCK);
  expect(problemsOf(text)).toEqual([]);
});

test('problems come by place, and the first does not hide the rest', () => {
  const text =
    HEAD.replace('wendle-marsh', 'wendel-marsh').replace('40', 'forty') + BLOCK.replace('made-by', 'mad-by');
  expect(told(text).map((line) => line.split(' ').slice(0, 2).join(' '))).toEqual([
    'value-unfit 5:10',
    'word-unknown 11:5',
  ]);
});
