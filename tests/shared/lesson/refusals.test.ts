import { expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { readYaml } from '../../../shared/lesson/index.ts';
import { demoLibrary } from '../../demo.ts';
import { processorMs } from '../../processor-ms.ts';
import { BLOCK, HEAD, problemsOf } from './lesson-text.ts';

const codes = (text: string): readonly string[] => [...new Set(problemsOf(text).map(({ code }) => code))];

test.each([
  '<script>alert(1)</script>',
  'A <b>pin</b>',
  '<!-- a note -->',
  '<img src=x onerror=alert(1)>',
  '<details open ontoggle=alert(1)>',
  '- <iframe src="x"></iframe>',
  '> <a href="x">y</a>',
  '<?php echo 1 ?>',
  '<![CDATA[ x ]]>',
])('raw HTML is refused: %s', (prose) => {
  expect(codes(`${HEAD}${prose}\n`)).toEqual(['html-refused']);
});

test.each([
  '[x](javascript:alert(1))',
  '[x](JaVaScRiPt:alert(1))',
  '[x]( javascript:alert(1))',
  '[x](<java\tscript:alert(1)>)',
  '[x](java&#115;cript:alert(1))',
  '[x](java&Tab;script:alert(1))',
  '[x](data:text/html,hello)',
  '[x](vbscript:x)',
  '[x](file:///etc/passwd)',
  '[x](//example.org/else)',
  '[x][y]\n\n[y]: javascript:alert(1)',
  '<javascript:alert(1)>',
])('a link that does not lead to a page is refused: %j', (prose) => {
  expect(codes(`${HEAD}${prose}\n`)).toEqual(['link-unsafe']);
});

test.each([
  '[x](https://example.org)',
  '[x](http://example.org)',
  '[x](mailto:a@example.org)',
  '[x](/help)',
  '[x](#top)',
  '[x](other.html)',
  '<https://example.org>',
])('a link that leads to a page is kept: %s', (prose) => {
  expect(codes(`${HEAD}${prose}\n`)).toEqual([]);
});

test.each([
  '![pin](pin.png)',
  '![pin](data:image/png;base64,AA)',
  '![pin][p]\n\n[p]: https://example.org/p.png',
  '[![pin](p.png)](https://example.org)',
])('a picture from elsewhere is refused: %j', (prose) => {
  expect(codes(`${HEAD}${prose}\n`)).toEqual(['picture-refused']);
});

test.each(['__proto__', 'constructor', 'prototype'])(
  'the key %s is refused wherever it stands, and pollutes nothing',
  (key) => {
    expect(codes(HEAD.replace('minutes: 40', `minutes: 40\n${key}: { polluted: yes }`) + BLOCK)).toEqual([
      'key-refused',
    ]);
    expect(codes(HEAD + BLOCK.replace('minutes: 8', `minutes: 8\n${key}: { polluted: yes }`))).toEqual([
      'key-refused',
    ]);
    expect(
      codes(HEAD + BLOCK.replace('[carved, ', `[{ name: carved, holds: [carved], "${key}": 1 }, `)),
    ).toEqual(['key-refused']);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  },
);

test('anchors that multiply (one line is ten of the line before) are refused at once', () => {
  const bomb = Array.from(
    { length: 9 },
    (_, level) =>
      `a${level}: &a${level} [${
        level === 0
          ? 'x'
          : Array(10)
              .fill(`*a${level - 1}`)
              .join(', ')
      }]`,
  );
  let faults: ReturnType<typeof readYaml>['faults'] = [];
  const milliseconds = processorMs(() => {
    ({ faults } = readYaml(bomb.join('\n')));
  });
  expect(milliseconds).toBeLessThan(500);
  expect(new Set(faults.map(({ code }) => code))).toEqual(new Set(['yaml-unreadable']));
});

test.each([
  { name: 'an alias', yaml: 'a: &a x\nb: *a' },
  { name: 'a merge', yaml: 'a: &a { x: 1 }\nb:\n  <<: *a' },
  { name: 'an alias to itself', yaml: '&a [*a]' },
  { name: 'brackets in brackets, 10,000 deep', yaml: `a: ${'['.repeat(10_000)}` },
  { name: 'braces in braces, 10,000 deep', yaml: `a: ${'{a: '.repeat(10_000)}` },
  { name: 'lists in lists, 10,000 deep', yaml: '- '.repeat(10_000) },
  {
    name: 'keys in keys, 500 deep',
    yaml: Array.from({ length: 500 }, (_, level) => `${' '.repeat(level)}a:`).join('\n'),
  },
  { name: 'a list as a key', yaml: '? [a, b]\n: c' },
])('YAML with $name is told, not followed', ({ yaml }) => {
  const { faults } = readYaml(yaml);
  expect(faults[0]?.code).toBe('yaml-unreadable');
  expect(faults.length).toBeLessThanOrEqual(6);
});

test.each([
  { key: 'yes', data: 'yes' },
  { key: 'no', data: 'no' },
  { key: '0o17', data: 15 },
  { key: '017', data: 17 },
  { key: '1:30', data: '1:30' },
  { key: '2026-11-25', data: '2026-11-25' },
  { key: '7-9', data: '7-9' },
  { key: '~', data: null },
])('YAML 1.2: $key reads as $data', ({ key, data }) => {
  expect(readYaml(`a: ${key}`).data).toEqual({ a: data });
});

test('a tag that is none to Markdown comes out as text', () => {
  const part = compileLesson('a.md', `${HEAD}<svg/onload=alert(1)>\n`, demoLibrary, '1').plan?.parts[0];
  expect(part?.part === 'prose' && part.html).toBe('<p>&#x3C;svg/onload=alert(1)></p>');
});

test('prose comes out as clean HTML, tables and all', () => {
  const prose =
    '# Two\n\nA *pin*, a **jaw**.\n\n| a | b |\n|---|---|\n| 1 | 2 |\n\n[more](https://example.org)\n';
  const part = compileLesson('a.md', HEAD + prose + BLOCK, demoLibrary, '1').plan?.parts[0];
  expect(part?.part === 'prose' && part.html).toBe(
    [
      '<h1>Two</h1>',
      '<p>A <em>pin</em>, a <strong>jaw</strong>.</p>',
      '<table>\n<thead>\n<tr>\n<th>a</th>\n<th>b</th>\n</tr>\n</thead>\n<tbody>\n<tr>\n<td>1</td>\n<td>2</td>\n</tr>\n</tbody>\n</table>',
      '<p><a href="https://example.org">more</a></p>',
    ].join('\n'),
  );
});
