import { cutLesson } from './cut-lesson.ts';
import { everyNode, readMarkdown } from './markdown.ts';
import { readYaml } from './read-yaml.ts';

/** A run of words a pupil reads, and where it begins in the file. */
export interface Passage {
  readonly text: string;
  readonly offset: number;
}

/** The keys of a block whose words pupils read. */
const READ_KEYS: ReadonlySet<string> = new Set([
  'title',
  'question',
  'hint',
  'because',
  'prompt',
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
]);

const WHOLE_KINDS: ReadonlySet<string> = new Set(['paragraph', 'heading', 'tableCell']);

function blockPassages(yaml: string, toFile: (offset: number) => number): readonly Passage[] {
  const read = readYaml(yaml);
  const passages: Passage[] = [];
  const walk = (value: unknown, path: readonly (string | number)[]): void => {
    // Of a list of sentences, the list has the key.
    const key = path.findLast((step) => typeof step === 'string');
    if (typeof value === 'string' && READ_KEYS.has(String(key))) {
      const { from } = read.locate(path);
      const quoteMark = /^["']/.test(yaml.slice(from, from + 1)) ? 1 : 0;
      passages.push({ text: value, offset: toFile(from + quoteMark) });
    } else if (typeof value === 'object' && value !== null) {
      for (const [step, inner] of Object.entries(value))
        walk(inner, [...path, Array.isArray(value) ? Number(step) : step]);
    }
  };
  walk(read.data, []);
  return passages;
}

/**
 * The words pupils read in a lesson file, in order: its prose, and the titles, questions, hints, reasons and voices of its
 * blocks. A file without a head is read as prose throughout. Marks of Markdown are blanked, so that places hold.
 */
export function readPassages(text: string): readonly Passage[] {
  const { body } = cutLesson(text);
  const passages: Passage[] = [];
  for (const { node } of everyNode(readMarkdown(body.text))) {
    const from = node.position?.start.offset ?? 0;
    const to = node.position?.end.offset ?? 0;
    if (node.type === 'code' && (node.lang ?? '') !== '') {
      const start = body.text.indexOf('\n', from) + 1;
      passages.push(...blockPassages(node.value, (offset) => body.offset + start + offset));
    } else if (WHOLE_KINDS.has(node.type)) {
      const slice = body.text.slice(from, to);
      const blanked = slice
        .replace(/\]\([^)]*\)/g, (mark) => ' '.repeat(mark.length))
        .replace(/[*_`#[\]\n\r]/g, ' ');
      passages.push({ text: blanked, offset: body.offset + from });
    }
  }
  return passages.toSorted((a, b) => a.offset - b.offset);
}
