import { assert, constantFrom, property, string } from 'fast-check';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import type { Nodes, Root } from 'mdast';
import { describe, expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { teacherNotes, writeMarkdown, type NotesDocument } from '../../../shared/notes/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

/** What an ordinary reader of Markdown makes of it: the check from outside. */
const read = (markdown: string): Root =>
  fromMarkdown(markdown, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });

function* nodesOf(node: Nodes): Generator<Nodes> {
  yield node;
  if ('children' in node) for (const child of node.children) yield* nodesOf(child);
}

const textOf = (node: Nodes): string =>
  [...nodesOf(node)].map((each) => (each.type === 'text' ? each.value : '')).join('');

const all = (root: Root, type: Nodes['type']): readonly Nodes[] =>
  [...nodesOf(root)].filter((node) => node.type === type);

describe.each(demoLessons)('the notes of $id as Markdown', ({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  if (plan === null) throw new Error(`${id} does not compile`);
  const document = teacherNotes(plan, demoLibrary);
  const root = read(writeMarkdown(document));

  test('hold no HTML, no link and no picture', () => {
    for (const type of ['html', 'link', 'image', 'code'] as const) expect(all(root, type)).toEqual([]);
  });

  test('have a heading for each section, in order', () => {
    const second = all(root, 'heading').filter((node) => node.type === 'heading' && node.depth === 2);
    expect(second.map((node) => textOf(node).split(' – ')[0])).toEqual(
      document.sections.map(({ title }) => title),
    );
  });

  test('have every table with every row and cell', () => {
    const tables = document.sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.block === 'table' ? [block] : [])),
    );
    const readTables = all(root, 'table');
    expect(readTables).toHaveLength(tables.length);
    for (const [index, table] of tables.entries()) {
      const cells = [...nodesOf(readTables[index] ?? root)].filter(({ type }) => type === 'tableCell');
      expect(cells).toHaveLength(table.heads.length * (table.rows.length + 1));
    }
  });
});

/** A document of one section in which a text stands in every sort of place. */
const holding = (words: string): NotesDocument => ({
  title: words,
  part: 'Notes',
  site: 'Site',
  particulars: [{ name: 'For', value: words }],
  caution: 'Look.',
  sections: [
    {
      id: 'a',
      title: words,
      blocks: [
        { block: 'text', text: words },
        { block: 'list', items: [words, words] },
        { block: 'table', heads: ['One', 'Two'], rows: [[{ text: 'x' }, { text: words }]] },
      ],
    },
  ],
});

const awkward = [
  '1. a',
  '- a',
  '# a',
  '> a',
  '| a |',
  '<b>a</b>',
  '&amp;',
  '*a*',
  '_a_',
  '`a`',
  '[a](b)',
  '+ a',
  '=== a',
  '~a~',
  'a\\b',
  '--- a',
];

test.each(awkward)('%s reads back as it was written, wherever it stands', (words) => {
  const root = read(writeMarkdown(holding(words)));
  const kinds = all(root, 'html').length + all(root, 'link').length + all(root, 'emphasis').length;
  expect(kinds).toBe(0);
  const [table] = all(root, 'table');
  const cells = table === undefined ? [] : [...nodesOf(table)].filter(({ type }) => type === 'tableCell');
  expect(cells.map(textOf)).toEqual(['One', 'Two', 'x', words]);
  expect(all(root, 'heading').map(textOf)).toEqual([words, words]);
  expect(all(root, 'listItem').slice(1).map(textOf)).toEqual([words, words]);
  expect(all(root, 'paragraph').map(textOf)).toContain(words);
});

test('any sentence reads back as it was written', () => {
  const letters = string({
    unit: constantFrom(...'ab 1.)-#*_`|<>[]&;\\~!+=:'.split('')),
    minLength: 1,
    maxLength: 24,
  });
  assert(
    property(letters, (given) => {
      const words = `a${given}b`.replaceAll(/\s+/g, ' ');
      const root = read(writeMarkdown(holding(words)));
      expect(all(root, 'heading').map(textOf)).toEqual([words, words]);
      expect(all(root, 'paragraph').map(textOf)).toContain(words);
    }),
    { numRuns: 300 },
  );
});
