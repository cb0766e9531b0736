import { expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { tangledProse } from '../../../shared/lesson/tangled-prose.ts';
import { demoLibrary } from '../../demo.ts';

const HEAD = '---\ntitle: Six pits\nsite: wendle-marsh\nbands: [7-9]\nminutes: 30\n---\n';

const codesOf = (text: string): readonly string[] =>
  compileLesson('six-pits.md', text, demoLibrary, '1').problems.map(({ code }) => code);

test.each([
  { name: 'a list of a hundred things', text: '- a *thing*\n'.repeat(100) },
  { name: 'a table of sixty finds', text: `| find | pit |\n|---|---|\n${'| pin | P3 |\n'.repeat(60)}` },
  { name: 'a line of five thousand characters', text: 'word '.repeat(1000) },
  { name: 'sixty links', text: '[a pin](https://example.org/pin) and '.repeat(60) },
  { name: 'a quotation in a quotation', text: '> > a word' },
])('$name is prose', ({ text }) => {
  expect(tangledProse(text)).toBeNull();
  expect(codesOf(HEAD + text)).toEqual([]);
});

test.each([
  { name: 'three thousand quotation marks', text: `>`.repeat(3000), code: 'nesting-deep' },
  { name: 'a list in a list in a list, thirty deep', text: `${'- '.repeat(30)}a`, code: 'nesting-deep' },
  { name: 'numbers in numbers', text: '1. '.repeat(5000), code: 'nesting-deep' },
  { name: 'twenty thousand brackets', text: '['.repeat(20_000), code: 'prose-tangled' },
  { name: 'links in links', text: '[a]('.repeat(5000), code: 'prose-tangled' },
  { name: 'ten thousand stars', text: '*a'.repeat(10_000), code: 'prose-tangled' },
  { name: 'ten thousand lines without a pause', text: 'a\n'.repeat(10_000), code: 'prose-tangled' },
  { name: 'a list of thousands', text: '- \n\n'.repeat(5000), code: 'prose-tangled' },
  { name: 'twenty thousand empty lines', text: '\n'.repeat(20_000), code: 'prose-tangled' },
])('$name is told once, with its place', ({ text, code }) => {
  expect(codesOf(`${HEAD}Some prose.\n\n${text}`)).toEqual([code]);
});

test('what stands in a block is not counted as prose', () => {
  expect(tangledProse(`\`\`\`sort\n${'[a]: *b*\n'.repeat(300)}\`\`\`\nText`)).toBeNull();
});

test('a block that holds more marks than any lesson needs is told once, and quickly', () => {
  const block = (inside: string): string => `${HEAD}\`\`\`sort\ntitle: x\n${inside}\n\`\`\`\n`;
  expect(codesOf(block(']'.repeat(20_000)))).toEqual(['yaml-unreadable']);
  expect(codesOf(block('a: [x]\n'.repeat(3000)))).toEqual(['yaml-unreadable']);
});
