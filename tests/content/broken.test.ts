import { expect, test } from 'vitest';
import { showProblem } from '../../src/command/show-problem.ts';
import { PROBLEM_CODES } from '../../shared/lesson/index.ts';
import { brokenFiles, problemsOf } from './broken-files.ts';
import { golden } from './changed.ts';

const NOTE = 'Unchanged, not known to be right: what the command line prints.\n\n';

test('the codes are sorted, and each stands once', () => {
  expect(PROBLEM_CODES).toEqual([...new Set(PROBLEM_CODES)].toSorted());
});

test('every code has a broken file, and every broken file a code', () => {
  const broken = [...new Set(brokenFiles.map(({ code }) => code))].toSorted();
  expect(broken).toEqual([...PROBLEM_CODES]);
});

test.each(brokenFiles)('$name has one fault, and one problem is told: $code', ({ name, code, text }) => {
  expect(problemsOf(name, text).map((problem) => problem.code)).toEqual([code]);
});

test.each(brokenFiles)('$name prints as it did', ({ name, text }) => {
  const printed = NOTE + problemsOf(name, text).map((problem) => showProblem(problem, text)).join('');
  expect(golden(`${name.replace(/\.[a-z]+$/, '')}.txt`, printed)).toBe(printed);
});

const variants = [
  { form: 'as it stands', write: (text: string) => text },
  { form: 'with Windows line ends', write: (text: string) => text.replaceAll('\n', '\r\n') },
  { form: 'after a byte-order mark', write: (text: string) => `\uFEFF${text}` },
  { form: 'after a longer first line', write: (text: string) => text.replace(/^---\n/, '---\n# 🦴 a note\n') },
];

const pressable = brokenFiles.flatMap(({ name, text }) =>
  problemsOf(name, text).some(({ edit }) => edit !== undefined)
    ? variants.map(({ form, write }) => ({ name, form, text: write(text) }))
    : [],
);

test('at least eight broken files have a mend that can be pressed', () => {
  expect(new Set(pressable.map(({ name }) => name)).size).toBeGreaterThanOrEqual(8);
});

test.each(pressable)('pressing the mend of $name, $form, leaves nothing to mend', ({ name, text }) => {
  const [problem] = problemsOf(name, text);
  const edit = problem?.edit;
  if (edit === undefined) throw new Error(`${name} has lost its mend`);
  expect(problemsOf(name, text.slice(0, edit.from) + edit.text + text.slice(edit.to))).toEqual([]);
});

test('a line of five thousand characters is cut to eighty round the caret', () => {
  const text = `---\ntitle: x\nsite: wendle-marsh\nbands: [7-9]\nminutes: 30\n---\n${'a'.repeat(2500)}<br>${'b'.repeat(2496)}\n`;
  const [problem] = problemsOf('long.md', text);
  if (problem === undefined) throw new Error('no problem was told');
  const [first, shown, caret] = showProblem(problem, text).split('\n');
  expect(first).toMatch(/^long\.md:7:2501: error: /);
  expect(shown).toBe(` 7 | ${'a'.repeat(40)}<br>${'b'.repeat(36)}`);
  expect(caret).toBe(`   | ${' '.repeat(40)}^^^^`);
});
