import { isMap, isScalar, parseDocument, Scalar, type Document } from 'yaml';
import type { DayEdit } from '../day/index.ts';

/** Words that YAML reads as themselves wherever they stand, in braces too. */
const PLAIN = /^[A-Za-z][\w .’-]*$/;
const MEANT = /^(?:true|false|null|yes|no|on|off|~)$/i;

/** A single value as written in a file. */
function written(value: string | number | boolean, isQuoted: boolean): string {
  if (typeof value !== 'string') return String(value);
  const isPlain = !isQuoted && PLAIN.test(value) && value === value.trim() && !MEANT.test(value);
  return isPlain ? value : JSON.stringify(value);
}

/** The text with one single value written over another, and all else to the letter; null where it is not so simple. */
function overwritten(text: string, document: Document, edit: DayEdit): string | null {
  if ('remove' in edit) return null;
  const { value } = edit;
  if (typeof value !== 'string' && typeof value !== 'number' && typeof value !== 'boolean') return null;
  const node: unknown = document.getIn(edit.path, true);
  if (!isScalar(node) || !node.range || node.anchor !== undefined || node.tag !== undefined) return null;
  const [from, to] = node.range;
  const isBlock = node.type === Scalar.BLOCK_FOLDED || node.type === Scalar.BLOCK_LITERAL;
  if (isBlock || to <= from) return null;
  const isQuoted = node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE;
  return `${text.slice(0, from)}${written(value, isQuoted)}${text.slice(to)}`;
}

/** The text with a change that adds or takes away: the rest is written again, comments and order kept. */
function rewritten(document: Document, edit: DayEdit): string {
  if ('remove' in edit) {
    if (document.hasIn(edit.path)) document.deleteIn(edit.path);
  } else {
    const { value } = edit;
    const isEntry = edit.path.length >= 2 || Array.isArray(value);
    const node =
      typeof value === 'object' && value !== null ? document.createNode(value, { flow: isEntry }) : value;
    document.setIn(edit.path, node);
  }
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

/**
 * Changes a day file. Where one value is written over another, nothing else in the text moves; where something is added
 * or taken away, comments and order stay. A text that is no YAML comes back as it is.
 *
 * @example editDay('title: A # ours\n', [{ path: ['title'], value: 'B' }]) // 'title: B # ours\n'
 */
export function editDay(given: string, edits: readonly DayEdit[]): string {
  let text = given;
  for (const edit of edits) {
    const document = parseDocument(text, { logLevel: 'silent' });
    if (document.errors.length > 0) return given;
    if (!isMap(document.contents)) return given;
    text = overwritten(text, document, edit) ?? rewritten(document, edit);
  }
  return text;
}
