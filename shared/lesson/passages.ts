import type { Nodes } from 'mdast';
import { everyNode } from './markdown.ts';
import type { Locate } from './place-faults.ts';
import type { Path } from './problem.ts';

/** A run of words a pupil reads, as it stands in the file, and where it begins there. */
export interface Passage {
  readonly text: string;
  readonly offset: number;
}

/** The keys of a block whose words pupils read, on the screen or on a card. */
export const READ_KEYS: ReadonlySet<string> = new Set([
  'because',
  'doubts',
  'hint',
  'name',
  'prompt',
  'question',
  'reading',
  'say',
  'text',
  'who',
  'says',
  'evidence',
  'stances',
  'hold',
  'look',
  'feel',
  'listen',
  'title',
  'why',
]);

const WHOLE_KINDS: ReadonlySet<string> = new Set(['paragraph', 'heading', 'tableCell']);
const WORD_KINDS: ReadonlySet<string> = new Set(['text', 'inlineCode']);

/**
 * The words of a paragraph, a heading or a cell; null for any other part of a tree. Marks of Markdown and the addresses
 * of links are blanked, so that places hold.
 *
 * @param offset Where `text`, from which the tree was read, begins in its file.
 */
export function prosePassage(node: Nodes, text: string, offset: number): Passage | null {
  if (!WHOLE_KINDS.has(node.type)) return null;
  const from = node.position?.start.offset ?? 0;
  let words = '';
  for (const { node: inner } of everyNode(node)) {
    const start = inner.position?.start.offset;
    if (!WORD_KINDS.has(inner.type) || start === undefined) continue;
    words +=
      ' '.repeat(Math.max(0, start - from - words.length)) + text.slice(start, inner.position?.end.offset);
  }
  return { text: words, offset: offset + from };
}

/**
 * The words pupils read of a block: its titles, questions, hints, names, reasons and voices, as they stand in the file.
 *
 * @param value The block as data.
 * @param locate From a path in the block to its place in the file.
 * @param text The whole file.
 */
export function blockPassages(value: unknown, locate: Locate, text: string): readonly Passage[] {
  const passages: Passage[] = [];
  const walk = (inner: unknown, path: Path, isRead: boolean): void => {
    if (typeof inner === 'string') {
      if (!isRead) return;
      const { from, to } = locate(path);
      passages.push({ text: text.slice(from, to), offset: from });
    } else if (Array.isArray(inner)) {
      for (const [index, item] of inner.entries()) walk(item, [...path, index], isRead);
    } else if (typeof inner === 'object' && inner !== null) {
      for (const [key, item] of Object.entries(inner)) walk(item, [...path, key], READ_KEYS.has(key));
    }
  };
  walk(value, [], false);
  return passages;
}
