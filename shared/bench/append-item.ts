import { isMap, isPair, isScalar, isSeq, parseDocument, type Node } from 'yaml';
import type { Path } from '../lesson/problem.ts';
import { readYaml } from '../lesson/read-yaml.ts';
import { changeData, isSame } from './change.ts';
import { changeYaml } from './change-yaml.ts';

/** An item as it is to stand: what it says, its lines after the dash, and a comment for the lines above it. */
export interface Item {
  readonly value: unknown;
  readonly lines: readonly string[];
  readonly comment?: readonly string[];
}

/** Where the last word of a value ends, however deep it stands. */
function endOf(node: Node | null): number | null {
  const inner = isMap(node) || isSeq(node) ? node.items.at(-1) : undefined;
  if ((isMap(node) || isSeq(node)) && node.flow !== true && inner !== undefined) {
    const last = isPair(inner) ? (inner.value ?? inner.key) : inner;
    return endOf(last as Node);
  }
  return node?.range?.[1] ?? null;
}

/** The item on lines of its own after the last of a list with dashes; null where there is no such list. */
function afterLast(yaml: string, path: Path, { lines, comment = [] }: Item): string | null {
  const list = parseDocument(yaml, { strict: true, uniqueKeys: false, prettyErrors: false }).getIn(
    path,
    true,
  );
  if (!isSeq(list) || list.flow === true) return null;
  // An item of a parsed list is a node.
  const last = list.items.at(-1) as Node | undefined;
  const end = endOf(last ?? null);
  const from = last?.range?.[0];
  if (end === null || from === undefined) return null;
  const dashLine = yaml.slice(yaml.lastIndexOf('\n', from - 1) + 1, from);
  const indent = /^( *)- +$/.exec(dashLine)?.[1];
  if (indent === undefined || (isScalar(last) && /^[|>]/.test(yaml.slice(from)))) return null;
  const newline = yaml.includes('\r\n') ? '\r\n' : '\n';
  const lineEnd = yaml.indexOf('\n', yaml[end - 1] === '\n' ? end - 1 : end);
  const at = lineEnd === -1 ? yaml.length : lineEnd + 1;
  const written = [
    ...comment.map((line) => `${indent}# ${line}`),
    ...lines.map((line, index) => `${indent}${index === 0 ? '- ' : '  '}${line}`),
  ].join(newline);
  const before = yaml.slice(0, at);
  return lineEnd === -1 ? `${before}${newline}${written}` : `${before}${written}${newline}${yaml.slice(at)}`;
}

/**
 * Puts an item at the end of a list of YAML text, on lines of its own; nothing else is touched. A list in brackets, or
 * one that is not there yet, is changed as a form would.
 *
 * @returns null where the text cannot be read, or the item cannot be written.
 * @example appendItem('a:\n- x\n', ['a'], { value: 'y', lines: ['y'] }) // 'a:\n- x\n- y\n'
 */
export function appendItem(yaml: string, path: Path, item: Item): string | null {
  const before = readYaml(yaml);
  if (before.faults.length > 0) return null;
  const list = path.reduce<unknown>(
    (value, step) => (value as Readonly<Record<string, unknown>> | null | undefined)?.[step],
    before.data,
  );
  const change = {
    do: 'insert',
    path,
    at: Array.isArray(list) ? list.length : 0,
    value: item.value,
  } as const;
  const small = afterLast(yaml, path, item);
  if (small !== null) {
    const read = readYaml(small);
    if (read.faults.length === 0 && isSame(read.data, changeData(before.data, change))) return small;
  }
  return changeYaml(yaml, change);
}
