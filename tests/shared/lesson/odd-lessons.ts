import { pick, uniformBelow, type Stream } from '../../../shared/chance/index.ts';

const NAMES = ['sort', 'order', 'srot', '', 'js', 'SORT', 'sort extra', '__proto__', 'constructor'] as const;

const YAML_ODDITIES = [
  'a: &a [x]',
  'b: *a',
  '<<: *a',
  '? complex\n: key',
  '? [a, b]\n: c',
  '!!js/function x: y',
  'title: !!binary aGVq',
  '__proto__: { polluted: true }',
  'constructor: { prototype: { polluted: true } }',
  'minutes: .inf',
  'minutes: .nan',
  'minutes: -0',
  'minutes: 0x1F',
  'minutes: 1e400',
  'minutes: 9007199254740993',
  'minutes: 2026-11-25',
  'title: |\n  block\n   text',
  'title: >-\n  folded\n  text',
  'title: "unclosed',
  "title: 'unclosed",
  'title: "\\u0000\\x07\\uD800"',
  'bands: [7-9, , 9-11]',
  'bands: [7-9',
  'bands: {7-9}',
  '%YAML 1.1',
  '%TAG ! tag:x,2000:',
  '...',
  '---',
  '--- |',
  '- - - - -',
  '\tminutes: 3',
  ': : :',
  '? ? ?',
  '~: null',
  'title: #no',
  'title:no',
  '"title": x',
  'title: [[[[[[]]]]]]',
  'finds: { pit: P3, leave-out: [] }',
  'trays: ours',
  'trays: [a, a]',
  'also: [{}]',
  'also: {find: 1}',
  'y: yes',
  '\uFEFFtitle: x',
] as const;

const MARKDOWN_ODDITIES = [
  '<script>alert(1)</script>',
  '[x]( javascript:alert(1))',
  '[x](java&#10;script:alert(1))',
  '![p](x.png)',
  '[a]: javascript:x',
  '[a][a][a][a]',
  '| a | b |\n|---|---|\n| c | d |',
  '| a |\n|:-:|',
  '&#0; &#x110000; &notanentity;',
  '**_**_**_**_',
  '> ```sort\n> title: x\n> ```',
  '- ```sort\n  title: x\n  ```',
  '```sort',
  '~~~sort\n```\n~~~',
  '````sort\n```\n````',
  '    ```sort',
  '<!-- -->',
  '<![CDATA[',
  '<?php',
  '\\',
  '===',
  '***',
] as const;

const CONTROL = [
  '\u0000',
  '\u0007',
  '\u001b',
  '\u007f',
  '\u0085',
  '\u2028',
  '\u2029',
  '\ud800',
  '\udfff',
  '\u202e',
  '\u200d',
];

const RUNS = [
  '>',
  '[',
  ']',
  '{',
  '}',
  '(',
  '`',
  '"',
  "'",
  '*',
  '_',
  '~',
  '-',
  '- ',
  '? ',
  ': ',
  '> ',
  ' ',
  '\t',
  '#',
  '|',
  '&',
  '<',
  '!',
  '![',
  '[[',
  '](',
  '\\',
  '=',
  '\r',
  '\n',
  '>\n',
  '- \n',
  '*a',
  '_a ',
  '<a',
  '&a',
  '`a',
  '[a](',
  '**a ',
  '[x]:',
  '|a',
  '1.',
  '1. ',
  '$',
  '{[',
  '[{',
  '"\\',
  ',',
  '%',
] as const;

const length = (chance: Stream): number => {
  const size = uniformBelow(chance, 40);
  if (size === 0) return 1 + uniformBelow(chance, 20_000);
  return 1 + uniformBelow(chance, size < 6 ? 2000 : 60);
};

function anyText(chance: Stream): string {
  return Array.from({ length: uniformBelow(chance, 60) }, () => {
    const sort = uniformBelow(chance, 6);
    if (sort === 0) return String.fromCodePoint(uniformBelow(chance, 0x11_0000));
    if (sort === 1) return pick(chance, CONTROL);
    if (sort === 2) return pick(chance, RUNS);
    return String.fromCharCode(32 + uniformBelow(chance, 96));
  }).join('');
}

const run = (chance: Stream): string => {
  const text = pick(chance, RUNS);
  return text.repeat(Math.ceil(length(chance) / text.length));
};

function spoilLines(chance: Stream, text: string): string {
  const lines = text.split('\n');
  const at = uniformBelow(chance, lines.length);
  const other = uniformBelow(chance, lines.length);
  const line = lines[at] ?? '';
  switch (uniformBelow(chance, 8)) {
    case 0:
      return lines.toSpliced(at, 1).join('\n');
    case 1:
      return lines.toSpliced(at, 0, line).join('\n');
    case 2:
      return lines
        .with(at, lines[other] ?? '')
        .with(other, line)
        .join('\n');
    case 3:
      return lines.with(at, ' '.repeat(length(chance)) + line).join('\n');
    case 4:
      return lines
        .with(at, pick(chance, ['> ', '- ', '\t', '    ', '1. ', '# ', '| ', '```']) + line)
        .join('\n');
    case 5:
      return lines.toSpliced(at, 0, pick(chance, YAML_ODDITIES)).join('\n');
    case 6:
      return lines.toSpliced(at, 0, pick(chance, MARKDOWN_ODDITIES)).join('\n');
    default:
      return lines.toSpliced(at, 0, `\`\`\`${pick(chance, NAMES)}`).join('\n');
  }
}

function spoil(chance: Stream, text: string, demo: readonly string[]): string {
  const at = uniformBelow(chance, text.length + 1);
  switch (uniformBelow(chance, 10)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1 + uniformBelow(chance, 200));
    case 1:
      return text.slice(0, at) + anyText(chance) + text.slice(at);
    case 2:
      return text.slice(0, at) + run(chance) + text.slice(at);
    case 3: {
      const other = pick(chance, demo);
      return text.slice(0, at) + other.slice(uniformBelow(chance, other.length));
    }
    case 4:
      return text.slice(0, at) + pick(chance, CONTROL) + text.slice(at);
    case 5:
      return pick(chance, [
        text.replaceAll('\n', '\r\n'),
        text.replaceAll('\n', '\r'),
        `\uFEFF${text}`,
        text.trimEnd(),
      ]);
    default:
      return spoilLines(chance, text);
  }
}

/**
 * An odd lesson: a demo lesson spoilt one to four times over, or text of no kind at all.
 */
export function oddLesson(chance: Stream, demo: readonly string[]): string {
  const sort = uniformBelow(chance, 10);
  if (sort === 0)
    return Array.from({ length: 1 + uniformBelow(chance, 4) }, () => anyText(chance)).join('\n');
  if (sort === 1) return run(chance) + anyText(chance) + run(chance);
  if (sort === 2) {
    const inside = Array.from({ length: 1 + uniformBelow(chance, 6) }, () =>
      pick(chance, YAML_ODDITIES),
    ).join('\n');
    const body = Array.from({ length: 1 + uniformBelow(chance, 6) }, () =>
      pick(chance, MARKDOWN_ODDITIES),
    ).join('\n');
    return `---\n${inside}\n---\n${body}\n\`\`\`${pick(chance, NAMES)}\n${inside}\n\`\`\`\n${anyText(chance)}`;
  }
  const times = 1 + uniformBelow(chance, 4);
  let text = pick(chance, demo);
  for (let time = 0; time < times; time += 1) text = spoil(chance, text, demo);
  return text;
}
