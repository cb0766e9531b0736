import ts from 'typescript';
import { expect, test } from 'vitest';
import { lineAt, sourceFiles, type SourceFile } from './source-files.ts';

const WORD = /\p{L}{2,}/u;
const READ_ATTRIBUTES = new Set([
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'alt',
  'title',
  'placeholder',
  'label',
]);

/** The markup of a component: for Astro what follows the front matter, as far from the top as it was. */
function markup({ path, text }: SourceFile): string {
  if (!path.endsWith('.astro')) return text;
  const blank = (part: string): string => part.replace(/[^\n]/g, ' ');
  const body = text
    .replace(/^---\n[\s\S]*?\n---/, blank)
    .replace(/<(style|script)\b[\s\S]*?<\/\1>|<!--[\s\S]*?-->|<!doctype[^>]*>/gi, blank);
  return `<>${body}\n</>`;
}

/** True where the value of a text would be shown: a child itself, or the end of a choice among children. */
function isShown(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isJsxExpression(parent)) return ts.isJsxElement(parent.parent) || ts.isJsxFragment(parent.parent);
  if (ts.isConditionalExpression(parent)) return parent.condition !== node && isShown(parent);
  if (ts.isBinaryExpression(parent)) {
    const { kind } = parent.operatorToken;
    const passesOn = [
      ts.SyntaxKind.AmpersandAmpersandToken,
      ts.SyntaxKind.BarBarToken,
      ts.SyntaxKind.QuestionQuestionToken,
      ts.SyntaxKind.PlusToken,
    ];
    return passesOn.includes(kind) && isShown(parent);
  }
  return ts.isParenthesizedExpression(parent) && isShown(parent);
}

/** What is typed, word for word, is the same in every language. */
const isTyped = (node: ts.Node): boolean =>
  ts.isJsxElement(node.parent) &&
  ['code', 'kbd', 'samp'].includes(node.parent.openingElement.tagName.getText());

/** Words that a reader would see and that stand in a component instead of the catalogue. */
function wordsLeft(file: SourceFile): readonly string[] {
  const text = markup(file);
  const findings: string[] = [];
  const report = (node: ts.Node, words: string): void => {
    if (WORD.test(words))
      findings.push(`${file.path}:${lineAt(text, node.getStart())}: ${words.replace(/\s+/g, ' ').trim()}`);
  };
  const visit = (node: ts.Node): void => {
    // An entity such as &nbsp; is no word.
    if (ts.isJsxText(node) && isTyped(node)) return;
    if (ts.isJsxText(node)) report(node, node.text.replace(/&#?\w+;/g, ' '));
    else if (ts.isJsxAttribute(node) && READ_ATTRIBUTES.has(node.name.getText())) {
      const value = node.initializer;
      if (value !== undefined && ts.isStringLiteral(value)) report(node, value.text);
      else if (value !== undefined && ts.isJsxExpression(value) && value.expression !== undefined) {
        if (ts.isStringLiteralLike(value.expression)) report(node, value.expression.text);
        if (ts.isTemplateExpression(value.expression)) {
          const { head, templateSpans } = value.expression;
          report(node, [head.text, ...templateSpans.map(({ literal }) => literal.text)].join(' '));
        }
      }
    } else if (ts.isStringLiteralLike(node) && isShown(node)) report(node, node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file.path, text, ts.ScriptTarget.ESNext, true, ts.ScriptKind.TSX));
  return findings;
}

test('no words are left in components: every sentence is in the catalogue', () => {
  const files = sourceFiles(['src'], ['.tsx', '.astro']);
  expect(files.length).toBeGreaterThan(20);
  expect(files.flatMap(wordsLeft)).toEqual([]);
});

test.each([
  { name: 'text of an element', path: 'a.tsx', text: 'const a = <p>Well done</p>;', words: 'Well done' },
  { name: 'a label', path: 'a.tsx', text: 'const a = <button aria-label="Close it" />;', words: 'Close it' },
  {
    name: 'a label put together',
    path: 'a.tsx',
    text: 'const a = <b title={`Find ${n}`} />;',
    words: 'Find',
  },
  { name: 'a choice', path: 'a.tsx', text: "const a = <p>{ok ? 'Right' : w.no}</p>;", words: 'Right' },
  {
    name: 'text of a page',
    path: 'a.astro',
    text: '---\nconst x = 1;\n---\n<p>Well done</p>',
    words: 'Well done',
  },
  {
    name: 'a placeholder of a page',
    path: 'a.astro',
    text: '---\n---\n<input placeholder="Name" />',
    words: 'Name',
  },
])('$name planted in a component is reported', ({ path, text, words }) => {
  expect(wordsLeft({ path, text }).map((finding) => finding.split(': ')[1])).toEqual([words]);
});

test.each([
  "const a = <p class='tray' data-way={way === 'hands'}>{words.title} – {count}&nbsp;</p>;",
  'const a = <code>npm run dev</code>;',
  "const a = <p>{grade === 'error' ? words.error : words.caution}</p>;",
  "const a = <p>{list.map((find) => find.name).join(', ')}</p>;",
])('what is no word of ours is let be: %s', (text) => {
  expect(wordsLeft({ path: 'a.tsx', text })).toEqual([]);
});
