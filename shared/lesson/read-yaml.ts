import { isAlias, isMap, isScalar, isSeq, parseDocument, type Node, type Pair } from 'yaml';
import { yamlWords } from '../words/en/problems.ts';
import type { Fault, Path } from './problem.ts';

interface Span {
  readonly from: number;
  readonly to: number;
}

/** A fault that the YAML reader itself found, with its own place. */
export interface PlacedFault extends Omit<Fault, 'path' | 'atKey'> {
  readonly span: Span;
}

/** YAML text as plain data, with the place of each key and value. Offsets count from the start of that text. */
export interface YamlData {
  readonly data: unknown;
  readonly faults: readonly PlacedFault[];
  /** The place of the value at a path (or of its key); the nearest parent's where there is none. */
  readonly locate: (path: Path, atKey?: boolean) => Span;
}

const REFUSED_KEYS = new Set(['__proto__', 'constructor', 'prototype']);
const DEEPEST = 24;
const FLOW_DEEPEST = 64;
const MARKS = /[\n\r[\]{},:?"'*&!|>%@`]/g;
const MOST_UNREADABLE = 5;

/** Text nested this deep would exhaust the parser's stack; nobody writes it by hand. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  for (const character of text) {
    if (character === '[' || character === '{') depth += 1;
    else if (character === ']' || character === '}') depth -= 1;
    if (depth > FLOW_DEEPEST) return true;
  }
  // Block nesting: "- - - - x" and ever deeper indents both need a column for each level.
  return (
    text
      .split('\n')
      .some((line) => (/^(?:[ ]*[-?:] )*/.exec(line)?.[0].match(/[-?:] /g)?.length ?? 0) > FLOW_DEEPEST) ||
    /^ {160,}\S/m.test(text)
  );
}

/**
 * Reads YAML 1.2 (core schema) and keeps where everything stood. Anchors, aliases, tags and keys that reach into a
 * program's own objects are refused; the rest of the text is still read, so that one fault hides no other.
 *
 * @param most The most lines and marks that are read: the parser takes long over runs of thousands.
 * @example readYaml('title: Six pits').data // { title: 'Six pits' }
 */
export function readYaml(text: string, most = Number.POSITIVE_INFINITY): YamlData {
  const places = new Map<string, { key: Span | null; value: Span }>();
  const faults: PlacedFault[] = [];
  const whole: Span = { from: 0, to: text.length };
  const locate = (path: Path, atKey = false): Span => {
    for (let length = path.length; length >= 0; length -= 1) {
      const place = places.get(JSON.stringify(path.slice(0, length)));
      if (place !== undefined)
        return atKey && length === path.length && place.key !== null ? place.key : place.value;
    }
    return whole;
  };
  const fault = (
    code: Fault['code'],
    span: Span,
    words: Pick<Fault, 'expected' | 'received' | 'mend'>,
  ): void => {
    faults.push({ code, grade: 'error', span, ...words });
  };
  if ((text.match(MARKS)?.length ?? 0) > most) {
    fault('yaml-unreadable', { from: 0, to: Math.min(1, text.length) }, yamlWords.tooMuch(most));
    return { data: undefined, faults, locate };
  }
  if (isTooDeep(text)) {
    fault('yaml-unreadable', { from: 0, to: Math.min(1, text.length) }, yamlWords.tooDeep());
    return { data: undefined, faults, locate };
  }
  const document = parseDocument(text, {
    strict: true,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'silent',
  });
  // After the first, most of what cannot be read on a line, and soon in a block, is a consequence.
  let lastEnd = -1;
  for (const error of document.errors.toSorted((a, b) => a.pos[0] - b.pos[0])) {
    const [from, to] = error.pos;
    const isOnSameLine = lastEnd >= 0 && !/[\n\r]/.test(text.slice(lastEnd, from));
    if (isOnSameLine || faults.length >= MOST_UNREADABLE) continue;
    lastEnd = from;
    fault('yaml-unreadable', { from, to: Math.max(to, from) }, yamlWords.unreadable(error.code));
  }

  const spanOf = (node: Node | null | undefined): Span | null => {
    const range = node?.range;
    return range ? { from: range[0], to: Math.max(range[0], range[1]) } : null;
  };

  const readPair = (
    pair: Pair,
    path: Path,
    parent: Span,
    depth: number,
    into: Record<string, unknown>,
  ): void => {
    // A pair of a parsed document holds nodes.
    const keyNode = pair.key as Node | null;
    const keySpan = spanOf(keyNode) ?? parent;
    if (!isScalar(keyNode)) {
      fault('yaml-unreadable', keySpan, yamlWords.keyNotText());
      return;
    }
    const key = String(keyNode.value);
    if (REFUSED_KEYS.has(key)) {
      fault('key-refused', keySpan, yamlWords.refusedKey(key));
      return;
    }
    if (Object.hasOwn(into, key)) {
      fault('key-repeated', keySpan, yamlWords.repeated(key));
      return;
    }
    const valueNode = pair.value as Node | null;
    const here = [...path, key];
    into[key] = readNode(valueNode, here, spanOf(valueNode) ?? keySpan, depth + 1, keySpan);
  };

  const readNode = (
    node: Node | null,
    path: Path,
    fallback: Span,
    depth: number,
    key: Span | null,
  ): unknown => {
    const span = spanOf(node) ?? fallback;
    places.set(JSON.stringify(path), { key, value: span });
    if (depth > DEEPEST) {
      fault('yaml-unreadable', span, yamlWords.tooDeep());
      return undefined;
    }
    if (isAlias(node)) {
      fault('yaml-unreadable', span, yamlWords.alias());
      return undefined;
    }
    if (isMap(node)) {
      const into: Record<string, unknown> = {};
      for (const pair of node.items) readPair(pair, path, span, depth, into);
      return into;
    }
    if (isSeq(node)) {
      return node.items.map((item, index) =>
        readNode(item as Node | null, [...path, index], span, depth + 1, null),
      );
    }
    return isScalar(node) ? node.value : null;
  };

  const data = document.contents === null ? undefined : readNode(document.contents, [], whole, 0, null);
  return { data, faults, locate };
}
