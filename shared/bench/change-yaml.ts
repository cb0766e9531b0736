import { isMap, isScalar, isSeq, parseDocument, type Document, type Node, type Pair } from 'yaml';
import type { Path } from '../lesson/problem.ts';
import { readYaml } from '../lesson/read-yaml.ts';
import { changeData, isSame, type Change } from './change.ts';
import { writeFlow, writeValue } from './write-flow.ts';

const parse = (yaml: string): Document =>
  parseDocument(yaml, { strict: true, uniqueKeys: false, prettyErrors: false });

const nodeAt = (document: Document, path: Path): Node | null => {
  const found = path.length === 0 ? document.contents : document.getIn(path, true);
  // With `true`, what is found is a node.
  return (found ?? null) as Node | null;
};

/** A node's text, from its first sign to its last; null where it has no place. */
function spanOf(node: Node | null): { readonly from: number; readonly to: number } | null {
  const range = node?.range;
  return range ? { from: range[0], to: range[1] } : null;
}

const splice = (text: string, from: number, to: number, put: string): string =>
  text.slice(0, from) + put + text.slice(to);

const isFlow = (node: Node | null): boolean => (isMap(node) || isSeq(node)) && node.flow === true;

/** True where the node stands between brackets, its own or its parents'. */
const standsInFlow = (document: Document, path: Path): boolean =>
  path.some((_, length) => isFlow(nodeAt(document, path.slice(0, length))));

const hasComment = (text: string): boolean => /(?:^|\s)#/.test(text);

/** The whole lines from one offset to another, with their line end. */
function linesAround(yaml: string, from: number, to: number): { readonly from: number; readonly to: number } {
  const start = yaml.lastIndexOf('\n', from - 1) + 1;
  const end = yaml.indexOf('\n', Math.max(start, to - 1));
  return { from: start, to: end === -1 ? yaml.length : end + 1 };
}

/** A new value in the place of the old one, nothing else touched. */
function setInPlace(yaml: string, document: Document, path: Path, value: unknown): string | null {
  const node = nodeAt(document, path);
  const span = spanOf(node);
  if (span === null || node === null) return null;
  const old = yaml.slice(span.from, span.to);
  if (!isScalar(node) && (!isFlow(node) || hasComment(old))) return null;
  const inFlow = standsInFlow(document, path);
  const written = inFlow || typeof value !== 'string' ? writeFlow(value) : writeValue(value);
  // After a colon stands a space, and a comment is held off by one.
  const before = /[:\-?]$/.test(yaml.slice(0, span.from)) ? ' ' : '';
  const after = yaml.startsWith('#', span.to) ? ' ' : '';
  return splice(yaml, span.from, span.to, before + written + after);
}

/** A new key on a line of its own at the end, or within the brackets of its parent. */
function addKey(yaml: string, document: Document, path: Path, value: unknown): string | null {
  const parentPath = path.slice(0, -1);
  const parent = nodeAt(document, parentPath);
  const key = String(path.at(-1));
  if (path.length === 1 && !isFlow(parent)) {
    const body = yaml.replace(/\n*$/, '');
    const tail = yaml.endsWith('\n') ? '\n' : '';
    return `${body}${body === '' ? '' : '\n'}${key}: ${typeof value === 'string' ? writeValue(value) : writeFlow(value)}${tail}`;
  }
  const span = spanOf(parent);
  if (!isMap(parent) || !isFlow(parent) || span === null) return null;
  const old = yaml.slice(span.from, span.to);
  if (hasComment(old)) return null;
  const inner = old.slice(1, -1).replace(/,?\s*$/, '');
  const pair = `${writeFlow(key)}: ${writeFlow(value)}`;
  return splice(yaml, span.from, span.to, inner.trim() === '' ? `{ ${pair} }` : `{${inner}, ${pair} }`);
}

/** A key or an item on lines of its own taken out, with what stands on those lines. */
function removeLines(yaml: string, document: Document, path: Path): string | null {
  if (standsInFlow(document, path)) return null;
  const parent = nodeAt(document, path.slice(0, -1));
  const last = path.at(-1);
  const pair = isMap(parent)
    ? parent.items.find(({ key }) => isScalar(key) && String(key.value) === String(last))
    : undefined;
  // A key of a parsed document is a node.
  const first = isMap(parent) ? spanOf(pair?.key as Node) : spanOf(nodeAt(document, path));
  const value = spanOf(nodeAt(document, path)) ?? first;
  if (first === null || value === null) return null;
  const lines = linesAround(yaml, first.from, Math.max(first.to, value.to));
  const lead = yaml.slice(lines.from, first.from);
  if (!/^\s*(?:- +)?$/.test(lead) || (isMap(parent) && lead.includes('-'))) return null;
  return splice(yaml, lines.from, lines.to, '');
}

/** The items of a list in brackets, laid anew in another order, with others among them. */
function relist(
  yaml: string,
  document: Document,
  path: Path,
  lay: (items: readonly string[]) => readonly string[],
): string | null {
  const node = nodeAt(document, path);
  const span = spanOf(node);
  if (!isSeq(node) || !isFlow(node) || span === null) return null;
  if (hasComment(yaml.slice(span.from, span.to))) return null;
  const items = node.items.map((item) => {
    const place = spanOf(item as Node);
    return place === null ? '' : yaml.slice(place.from, place.to);
  });
  return items.includes('') ? null : splice(yaml, span.from, span.to, `[${lay(items).join(', ')}]`);
}

/** The smallest change of the text, where one is seen; else null. */
function inPlace(yaml: string, document: Document, change: Change): string | null {
  switch (change.do) {
    case 'set':
      return document.hasIn(change.path)
        ? setInPlace(yaml, document, change.path, change.value)
        : addKey(yaml, document, change.path, change.value);
    case 'remove': {
      const last = change.path.at(-1);
      return typeof last === 'number'
        ? (relist(yaml, document, change.path.slice(0, -1), (items) => items.toSpliced(last, 1)) ??
            removeLines(yaml, document, change.path))
        : removeLines(yaml, document, change.path);
    }
    case 'insert':
      return relist(yaml, document, change.path, (items) =>
        items.toSpliced(change.at, 0, writeFlow(change.value)),
      );
    case 'move':
      return relist(yaml, document, change.path, (items) =>
        items.toSpliced(change.from, 1).toSpliced(change.to, 0, items[change.from] ?? ''),
      );
    default:
      return change satisfies never;
  }
}

/** Comments of what is taken out go to what follows it: a note to oneself is never lost. */
function hand(from: Node | null, to: Node | Document | null): void {
  const comment = from?.commentBefore;
  if (!comment || to === null) return;
  to.commentBefore = to.commentBefore ? `${comment}\n${to.commentBefore}` : comment;
}

/** The change made on the document itself: it is written anew, with its comments and the order of its keys. */
function throughDocument(yaml: string, change: Change): string {
  const document = parse(yaml);
  const { path } = change;
  if (change.do === 'set') {
    const old = nodeAt(document, path);
    const made = document.createNode(change.value) as Node;
    hand(old, made);
    if (path.length === 0) document.contents = made as typeof document.contents;
    else document.setIn(path, made);
  } else if (change.do === 'remove') {
    const parent = nodeAt(document, path.slice(0, -1));
    if (isMap(parent) || isSeq(parent)) {
      const index = isSeq(parent)
        ? Number(path.at(-1))
        : parent.items.findIndex(({ key }) => isScalar(key) && String(key.value) === String(path.at(-1)));
      const keyOf = (item: unknown): Node | null =>
        (isMap(parent) ? (item as Pair | undefined)?.key : item) as Node | null;
      hand(keyOf(parent.items[index]), keyOf(parent.items[index + 1]) ?? document);
    }
    document.deleteIn(path);
  } else {
    const list = nodeAt(document, path);
    if (!isSeq(list)) document.setIn(path, document.createNode(changeData([], { ...change, path: [] })));
    else if (change.do === 'insert') list.items.splice(change.at, 0, document.createNode(change.value));
    else list.items.splice(change.to, 0, ...list.items.splice(change.from, 1));
  }
  const written = document.toString({ lineWidth: 0 });
  return yaml.endsWith('\n') ? written : written.replace(/\n$/, '');
}

/**
 * Makes a change to YAML text and leaves all else as it stands: comments, the order of keys, keys nobody knows. The
 * smallest change is tried first, then the document is written anew; each is read again and must say what was meant.
 *
 * @returns null where the text cannot be read, or the change cannot be written.
 * @example changeYaml('minutes: 8 # short', { do: 'set', path: ['minutes'], value: 12 }) // 'minutes: 12 # short'
 */
export function changeYaml(yaml: string, change: Change): string | null {
  const before = readYaml(yaml);
  if (before.faults.length > 0) return null;
  const wanted = changeData(before.data ?? {}, change);
  const saysWhatIsMeant = (text: string | null): text is string => {
    if (text === null) return false;
    const read = readYaml(text);
    return read.faults.length === 0 && isSame(read.data ?? {}, wanted);
  };
  const small = inPlace(yaml, parse(yaml), change);
  if (saysWhatIsMeant(small)) return small;
  const whole = throughDocument(yaml, change);
  return saysWhatIsMeant(whole) ? whole : null;
}
