import { createHash } from 'node:crypto';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { joinPage, pagePolicy, scriptText, styleText } from '../../../shared/packs/index.ts';
import { htmlText, jsonText } from '../../../shared/packs/page-text.ts';

const HOSTILE = '</script><script>x</script><!-- </style> "\'& \u2028';

const page = (parts: Partial<Parameters<typeof joinPage>[0]> = {}): string =>
  joinPage({
    lang: 'en',
    title: 'Six pits',
    policy: "default-src 'none'",
    css: 'p{}',
    script: 'let a = 1;',
    lesson: {},
    withoutScript: 'none',
    ...parts,
  });

/** The texts of the blocks of a kind, ended where a browser ends them. */
const blocks = (html: string, name: string): readonly string[] =>
  [...html.matchAll(new RegExp(`<${name}[^>]*>([\\s\\S]*?)</${name}`, 'gi'))].map(([, text]) => text ?? '');

test('a hostile text ends no block, wherever it stands', () => {
  const html = page({
    title: HOSTILE,
    withoutScript: HOSTILE,
    lesson: { title: HOSTILE },
    script: `const a = ${JSON.stringify(HOSTILE)};`,
    css: `p::after{content:"</style><b>"}`,
  });
  const [lesson, script, ...more] = blocks(html, 'script');
  expect(more).toEqual([]);
  expect(JSON.parse(lesson ?? '')).toEqual({ title: HOSTILE });
  // The script still says what it said.
  expect(runInNewContext(`${script ?? ''}; a`)).toBe(HOSTILE);
  expect(blocks(html, 'style')).toHaveLength(1);
  expect(html).not.toContain('<!-- ');
});

test('what is hashed is what stands in the page, to the byte', () => {
  const script = 'const a = "</script>";\r\nconst b = "<!--";\r';
  const css = 'p::after{content:"</style>"}\r\n';
  const html = page({ script, css });
  const hash = (text: string): string => createHash('sha256').update(text).digest('base64');
  expect(hash(blocks(html, 'script')[1] ?? '')).toBe(hash(scriptText(script)));
  expect(hash(blocks(html, 'style')[0] ?? '')).toBe(hash(styleText(css)));
  expect(scriptText(scriptText(script))).toBe(scriptText(script));
  expect(styleText(styleText(css))).toBe(styleText(css));
  expect(scriptText(script)).not.toContain('\r');
});

test('the policy names one script and one sheet, and asks for nothing', () => {
  const policy = pagePolicy({ script: 'AA=', style: 'BB=', hasFonts: false });
  expect(policy).toBe(
    "default-src 'none'; script-src 'sha256-AA='; style-src 'sha256-BB='; img-src data:; base-uri 'none'; form-action 'none'",
  );
  expect(pagePolicy({ script: 'AA=', style: 'BB=', hasFonts: true })).toContain('; font-src data:;');
  expect(policy).not.toContain('unsafe');
});

test('the policy stands before all that it rules', () => {
  const html = page();
  expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<title>'));
  expect(html).not.toMatch(/<script[^>]*src=|<link[^>]*stylesheet/);
});

test('the examples in the comments hold', () => {
  expect(htmlText('a < "b"')).toBe('a &lt; &quot;b&quot;');
  expect(jsonText({ a: '</script>' })).toBe('{"a":"\\u003c/script>"}');
  expect(scriptText('a = "</script>"')).toBe('a = "\\x3c/script>"');
  expect(styleText('p::after { content: "</style>" }')).toBe('p::after { content: "<\\/style>" }');
  expect(page({ title: '</script>' })).toContain('<title>&lt;/script&gt;</title>');
});
