import { basename } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { kindNames } from '../../shared/activities/index.ts';
import { lineAt, sourceFiles, type SourceFile } from './source-files.ts';

/** Where a word means something else: how near a child comes to a piece, the handle of an axe; a list of the notes. */
const OTHER_MEANINGS: Readonly<Record<string, readonly string[]>> = {
  handle: ['shared/safety/vocabulary.ts', 'shared/drafting/order-draft.ts'],
  talk: ['shared/compile/check-notes.ts', 'shared/library/read-notes.ts', 'shared/notes/rows-sections.ts'],
};

/** A kind's own places: its folder, its words, the registry, and files of the site that carry its name. */
const isOwnPlace = (path: string, kind: string): boolean =>
  path.startsWith(`shared/activities/${kind}/`) ||
  path.startsWith('shared/words/') ||
  path === 'shared/activities/index.ts' ||
  path === 'shared/activities/scorers.ts' ||
  // An island is bound to its page when the page is built, so one component chooses among them by name.
  path === 'src/components/Activity.astro' ||
  (OTHER_MEANINGS[kind] ?? []).includes(path) ||
  [kind, kind.charAt(0).toUpperCase() + kind.slice(1)].some((name) =>
    new RegExp(`^${name}(?![a-z])`).test(basename(path)),
  );

/** String literals of a file that are the name of a kind, with their lines. */
function kindsNamed({ path, text }: SourceFile, kinds: readonly string[]): readonly string[] {
  const findings: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node) && kinds.includes(node.text) && !isOwnPlace(path, node.text)) {
      findings.push(`${path}:${lineAt(text, node.getStart())}: "${node.text}"`);
    }
    ts.forEachChild(node, visit);
  };
  visit(
    ts.createSourceFile(
      path,
      text,
      ts.ScriptTarget.ESNext,
      true,
      path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
    ),
  );
  return findings;
}

test('no file names a kind but the kind’s own', () => {
  const files = sourceFiles(['shared', 'src'], ['.ts', '.tsx']);
  expect(files.length).toBeGreaterThan(100);
  expect(files.flatMap((file) => kindsNamed(file, kindNames))).toEqual([]);
});

test('no page, layout or component names a kind', () => {
  const quoted = new RegExp(`(['"\`])(${kindNames.join('|')})\\1`, 'g');
  const findings = sourceFiles(['src'], ['.astro']).flatMap(({ path, text }) =>
    [...text.matchAll(quoted)]
      .filter(({ 2: kind }) => !isOwnPlace(path, kind ?? ''))
      .map(({ index, 0: word }) => `${path}:${lineAt(text, index)}: ${word}`),
  );
  expect(findings).toEqual([]);
});

test('a planted name is reported, and one in a comment is not', () => {
  const planted = {
    path: 'shared/compile/planted.ts',
    text: "// 'sort' in a comment\nconst kind = 'sort';\n",
  };
  expect(kindsNamed(planted, ['sort'])).toEqual(['shared/compile/planted.ts:2: "sort"']);
  expect(kindsNamed({ ...planted, path: 'shared/activities/sort/planted.ts' }, ['sort'])).toEqual([]);
});
