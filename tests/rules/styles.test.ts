import { expect, test } from 'vitest';
import { lineAt, sourceFiles, type SourceFile } from './source-files.ts';

/** Lengths of up to 3 px are hairlines and outlines; what is longer is a token. */
const HAIRLINE_PX = 3;

/** Where a longer px is meant: a root size before any token, and drawings, whose px are units of the drawing. */
const MEANT: readonly RegExp[] = [
  /^font-size: var\(--root-size, 18px\)$/,
  /^font-size: (?:17|34|52)px$/,
  /^stroke-width: /,
  /^border-inline-start-width: 10px$/,
];

const RULES: readonly { readonly name: string; readonly pattern: RegExp }[] = [
  {
    name: 'a colour outside tokens.css',
    pattern: /#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|hwb|oklch|oklab|lab|lch)a?\(/i,
  },
  { name: '!important', pattern: /!important/ },
  {
    name: 'a side instead of start or end',
    pattern:
      /^(?:(?:margin|padding|border|scroll-margin|scroll-padding)-(?:left|right|top|bottom)(?:-\w+)?|left|right|top|bottom|float|clear):/,
  },
  { name: 'a size instead of inline or block size', pattern: /^(?:min-|max-)?(?:width|height):/ },
  { name: 'text to a side', pattern: /^text-align: (?:left|right)$/ },
];

/** Everything in a style sheet that goes against the house style, with its line. */
function styleFaults({ path, text }: SourceFile): readonly string[] {
  const plain = text.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ' '));
  const findings: string[] = [];
  // A statement or a selector ends at a brace or a semicolon.
  for (const { 0: piece, 1: end, index } of plain.matchAll(/[^{};]*([{};]|$)/g)) {
    const written = piece
      .replace(/[{};]$/, '')
      .trim()
      .replace(/\s+/g, ' ');
    const at = `${path}:${lineAt(plain, index + piece.length - piece.trimStart().length)}`;
    if (written === '') continue;
    if (end === '{') {
      if (!written.startsWith('@') && /#[a-z]/i.test(written.replace(/\[[^\]]*\]/g, '')))
        findings.push(`${at}: an id: ${written}`);
      continue;
    }
    if (written.startsWith('@')) continue;
    for (const { name, pattern } of RULES)
      if (pattern.test(written)) findings.push(`${at}: ${name}: ${written}`);
    const longest = Math.max(0, ...[...written.matchAll(/([\d.]+)px/g)].map(({ 1: px }) => Number(px)));
    if (longest > HAIRLINE_PX && !MEANT.some((meant) => meant.test(written)))
      findings.push(`${at}: px: ${written}`);
  }
  return findings;
}

const sheets = sourceFiles(['src'], ['.css', '.astro'])
  .filter(({ path }) => !path.endsWith('/tokens.css'))
  .map(({ path, text }) => ({
    path,
    text: path.endsWith('.css')
      ? text
      : [...text.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/g)].map(({ 1: css }) => css).join('\n'),
  }));

test('styles are made of tokens, and say start and end', () => {
  expect(sheets.filter(({ path }) => path.endsWith('.css')).length).toBeGreaterThan(5);
  expect(sheets.flatMap(styleFaults)).toEqual([]);
});

test.each([
  { css: 'p { color: #fff; }', fault: 'a colour outside tokens.css' },
  { css: 'p { color: rgb(0 0 0 / 50%); }', fault: 'a colour outside tokens.css' },
  { css: 'p { color: var(--ink) !important; }', fault: '!important' },
  { css: '#sort { color: var(--ink); }', fault: 'an id' },
  { css: 'p { margin-left: var(--gap-1); }', fault: 'a side instead of start or end' },
  { css: '@media print { p { max-width: 10rem; } }', fault: 'a size instead of inline or block size' },
  { css: 'p { text-align: left; }', fault: 'text to a side' },
  { css: 'p { gap: 12px; }', fault: 'px' },
])('planted, it is reported: $css', ({ css, fault }) => {
  const findings = styleFaults({ path: 'planted.css', text: css });
  expect(findings).toHaveLength(1);
  expect(findings[0]).toContain(`planted.css:1: ${fault}`);
});

test('hairlines, media conditions and comments are let be', () => {
  const css =
    '/* #fff */ @media (max-width: 700px) { p { border: 1px solid var(--rule); inline-size: 50%; } }';
  expect(styleFaults({ path: 'planted.css', text: css })).toEqual([]);
});
