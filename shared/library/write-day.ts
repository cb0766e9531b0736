import { Document, isMap, isScalar, isSeq, Scalar, visit, type Node, type Pair } from 'yaml';
import type { DayParts } from './day-file.ts';

/** What is said beside the parts of a day file, each line a comment of its own. */
export interface DayComments {
  readonly head: readonly string[];
  /** Above a key of the file. */
  readonly above: { readonly [Key in keyof DayParts]?: readonly string[] };
  /** Behind an entry of a key, by its short name. */
  readonly behind: { readonly [Key in keyof DayParts]?: Readonly<Record<string, string>> };
  /** Behind the value of a key. */
  readonly after: { readonly [Key in keyof DayParts]?: string };
}

/** No comment ends a line early: what follows would be read. */
const comment = (lines: readonly string[]): string =>
  lines.map((line) => ` ${line.replace(/\s+/g, ' ').trim()}`).join('\n');

const CLOCK = /^\d\d:\d\d$/;

/** Entries in one line each, as our own days are written; times and dates in quotes, whoever reads them. */
function shape(node: Node | null | undefined): void {
  if (isMap(node) || isSeq(node)) {
    for (const item of node.items) {
      const entry = isSeq(node) ? item : (item as Pair).value;
      if (isMap(entry)) entry.flow = true;
    }
  }
}

/**
 * Writes a day file, with comments.
 *
 * @example writeDay({ title: 'A day', … }, { head: ['Ours'], above: {}, behind: {}, after: {} }) // '# Ours\n\ntitle: A day\n…'
 */
export function writeDay(parts: DayParts, { head, above, behind, after }: DayComments): string {
  const document = new Document(parts);
  document.commentBefore = comment(head);
  if (!isMap<Scalar<keyof DayParts>, Node>(document.contents)) return '';
  for (const { key, value } of document.contents.items) {
    shape(value);
    if (isSeq(value) && value.items.every(isScalar)) value.flow = true;
    const lines = above[key.value];
    if (lines !== undefined) key.commentBefore = comment(lines);
    const last = after[key.value];
    if (last !== undefined && value !== null) value.comment = comment([last]);
    const entries = behind[key.value] ?? {};
    if (isMap<Scalar<string>, Node>(value))
      for (const entry of value.items) {
        const said = entries[entry.key.value];
        if (said !== undefined && entry.value !== null) entry.value.comment = comment([said]);
      }
  }
  visit(document, {
    Scalar: (_, node) => {
      if (typeof node.value === 'string' && CLOCK.test(node.value)) node.type = Scalar.QUOTE_DOUBLE;
    },
  });
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}
