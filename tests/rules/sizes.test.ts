import { expect, test } from 'vitest';
import { sourceFiles } from './source-files.ts';

const LONGEST = 400;

interface Sized {
  readonly path: string;
  readonly lines: number;
}

const sized = (files: readonly { readonly path: string; readonly text: string }[]): readonly Sized[] =>
  files.map(({ path, text }) => ({ path, lines: text.trimEnd().split('\n').length }));

const tooLong = (files: readonly Sized[]): readonly string[] =>
  files.filter(({ lines }) => lines > LONGEST).map(({ path, lines }) => `${path}: ${lines}`);

const code = sized(sourceFiles(['shared', 'src', 'tests'], ['.ts', '.tsx', '.astro']));

test('no file of code is over 400 lines', () => {
  expect(tooLong(code)).toEqual([]);
});

test('a planted file of 401 lines is reported', () => {
  expect(tooLong(sized([{ path: 'shared/planted.ts', text: 'x;\n'.repeat(401) }]))).toEqual([
    'shared/planted.ts: 401',
  ]);
});

test('half the files of the product are under 80 lines, nine in ten under 200', () => {
  const product = code.filter(({ path }) => !path.startsWith('tests/')).map(({ lines }) => lines);
  expect(product.length).toBeGreaterThan(100);
  const share = (most: number): number => product.filter((lines) => lines < most).length / product.length;
  expect(share(80)).toBeGreaterThan(0.5);
  expect(share(200)).toBeGreaterThan(0.9);
});
