import type { Code } from 'mdast';
import { cutLesson } from '../lesson/cut-lesson.ts';
import { readMarkdown } from '../lesson/markdown.ts';
import { readYaml } from '../lesson/read-yaml.ts';
import { tangledProse } from '../lesson/tangled-prose.ts';

/** A run of YAML in a lesson file: the head, or what stands in a block. Offsets are of the whole file. */
export interface YamlPiece {
  readonly yamlFrom: number;
  readonly yamlTo: number;
  /** The spaces before each of its lines: a fence may be indented. */
  readonly indent: string;
  /** Its text, without the indent, each line ended by `\n`. */
  readonly yaml: string;
  /** What it says; null where it cannot be read. */
  readonly data: Readonly<Record<string, unknown>> | null;
}

/** A run of words between blocks. */
export interface ProsePiece {
  readonly part: 'prose';
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** A fenced block, from the line of its opening back-ticks to its closing ones. */
export interface BlockPiece extends YamlPiece {
  readonly part: 'block';
  readonly from: number;
  readonly to: number;
  readonly kindName: string;
  readonly isClosed: boolean;
}

/** A lesson file as the Bench shows it: head, runs of words and blocks in order, each with its place. */
export interface Outline {
  readonly head: YamlPiece | null;
  readonly parts: readonly (ProsePiece | BlockPiece)[];
}

const EVERY_LINE_END = /\r\n|\r/g;

type Known = ReadonlyMap<string, YamlPiece['data']>;

/** What each run of YAML said the last time: a run that has not changed is not read again. */
const knownFrom = (before: Outline | null): Known =>
  new Map(
    [before?.head ?? [], before?.parts ?? []]
      .flat()
      .flatMap((piece) => ('yaml' in piece ? [[piece.yaml, piece.data] as const] : [])),
  );

function yamlData(yaml: string, known: Known): YamlPiece['data'] {
  const before = known.get(yaml);
  if (before !== undefined) return before;
  const { data, faults } = readYaml(yaml);
  if (faults.length > 0) return null;
  if (data === undefined) return {};
  const isMap = typeof data === 'object' && data !== null && !Array.isArray(data);
  // A map of a YAML text has texts for keys.
  return isMap ? (data as Record<string, unknown>) : null;
}

function yamlPiece(text: string, from: number, to: number, indent: string, known: Known): YamlPiece {
  const raw = text.slice(from, to).replaceAll(EVERY_LINE_END, '\n');
  const yaml =
    indent === ''
      ? raw
      : raw
          .split('\n')
          .map((line) => {
            const spaces = /^ */.exec(line)?.[0].length ?? 0;
            return line.slice(Math.min(indent.length, spaces));
          })
          .join('\n');
  return { yamlFrom: from, yamlTo: to, indent, yaml, data: yamlData(yaml, known) };
}

const FENCE = /^(?:`{3,}|~{3,})/;

function blockPiece(text: string, node: Code, from: number, to: number, known: Known): BlockPiece {
  const slice = text.slice(from, to);
  const fence = FENCE.exec(slice)?.[0] ?? '```';
  const lineStart = Math.max(text.lastIndexOf('\n', from - 1), text.lastIndexOf('\r', from - 1)) + 1;
  const firstEnd = /\r\n|\n|\r/.exec(slice);
  const yamlFrom = firstEnd === null ? to : from + firstEnd.index + firstEnd[0].length;
  const lastLine = /(?:^|\r\n|\n|\r)([^\r\n]*)$/.exec(text.slice(yamlFrom, to));
  const closing = lastLine?.[1]?.trim() ?? '';
  const isClosed =
    firstEnd !== null && closing.length >= fence.length && closing.replaceAll(fence[0] ?? '`', '') === '';
  const yamlTo = isClosed && lastLine !== null ? yamlFrom + lastLine.index : to;
  return {
    part: 'block',
    from: lineStart,
    to,
    kindName: node.lang ?? '',
    isClosed,
    ...yamlPiece(text, yamlFrom, Math.max(yamlFrom, yamlTo), text.slice(lineStart, from), known),
  };
}

/**
 * Reads where the parts of a lesson file stand, so that a form can show and change them. Prose that is too tangled to
 * read is shown as one run of words.
 *
 * @param before What was read of an earlier text: runs that have not changed are not read again.
 * @example outline('---\ntitle: A\n---\nLook.').parts[0]?.part // 'prose'
 */
export function outline(given: string, before: Outline | null = null): Outline {
  const known = knownFrom(before);
  const shift = given.startsWith('\uFEFF') ? 1 : 0;
  const cut = cutLesson(given.slice(shift));
  const bodyFrom = cut.body.offset + shift;
  const head =
    cut.head === null || cut.fault !== null
      ? null
      : yamlPiece(given, cut.head.offset + shift, cut.head.offset + shift + cut.head.text.length, '', known);
  if (tangledProse(cut.body.text) !== null) {
    const prose = { part: 'prose', from: bodyFrom, to: given.length, text: cut.body.text } as const;
    return { head, parts: [prose] };
  }
  const parts: (ProsePiece | BlockPiece)[] = [];
  for (const node of readMarkdown(cut.body.text).children) {
    const from = bodyFrom + (node.position?.start.offset ?? 0);
    const to = bodyFrom + (node.position?.end.offset ?? 0);
    if (node.type === 'code' && FENCE.test(given.slice(from, to))) {
      parts.push(blockPiece(given, node, from, to, known));
      continue;
    }
    const last = parts.at(-1);
    const start = last?.part === 'prose' ? last.from : from;
    const prose: ProsePiece = { part: 'prose', from: start, to, text: given.slice(start, to) };
    if (last?.part === 'prose') parts[parts.length - 1] = prose;
    else parts.push(prose);
  }
  return { head, parts };
}
