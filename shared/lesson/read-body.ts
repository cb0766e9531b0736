import type { Code, Nodes, RootContent } from 'mdast';
import { fileWords } from '../words/en/problems.ts';
import { everyNode, readMarkdown, writeHtml } from './markdown.ts';
import { prosePassage, type Passage } from './passages.ts';
import { problemAt, type SourceText } from './place-faults.ts';
import type { Problem, ProblemCode, ProblemGrade } from './problem.ts';
import { tangledProse } from './tangled-prose.ts';

/** A fenced block as it stands in the file: its kind's name, its YAML, and the way back to file offsets. */
export interface RawBlock {
  readonly kindName: string;
  readonly yaml: string;
  /** The place of the kind's name after the back-ticks. */
  readonly nameSpan: { readonly from: number; readonly to: number };
  /** From an offset in `yaml` to an offset in the file. */
  readonly toFile: (offset: number) => number;
}

export type BodyPart =
  { readonly part: 'prose'; readonly html: string } | { readonly part: 'block'; readonly block: RawBlock };

export interface Body {
  readonly parts: readonly BodyPart[];
  /** The words of its prose, in order. */
  readonly prose: readonly Passage[];
  readonly problems: readonly Problem[];
}

const DEEPEST = 40;

/** Web and mail addresses, and places on this site; nothing that runs. */
const isSafeLink = (url: string): boolean => {
  // Browsers ignore spaces and control characters before and inside a scheme, so they are taken out first.
  // oxlint-disable-next-line no-control-regex
  const bare = url.replace(/[\u0000-\u0020\u007f]/g, '');
  return /^(?:https?:|mailto:)/i.test(bare) || (!/^[a-z][a-z0-9+.-]*:/i.test(bare) && !bare.startsWith('//'));
};

const isFence = (slice: string): boolean => /^(?:`{3,}|~{3,})/.test(slice);

function isClosed(slice: string): boolean {
  const fence = /^(?:`{3,}|~{3,})/.exec(slice)?.[0] ?? '```';
  const last =
    slice
      .split(/\r\n|\n|\r/)
      .slice(1)
      .at(-1)
      ?.trim() ?? '';
  return last.length >= fence.length && last.replaceAll(fence[0] ?? '`', '') === '';
}

/** Matches each line of the block's text to where it stands in the file, past indents and quotation marks. */
function offsetsOf(node: Code, slice: string, start: number): (offset: number) => number {
  const breaks = /\r\n|\n|\r/g;
  const sourceStarts: number[] = [];
  for (const match of slice.matchAll(breaks)) sourceStarts.push(match.index + match[0].length);
  const valueStarts = [0];
  for (const match of node.value.matchAll(breaks)) valueStarts.push(match.index + match[0].length);
  const lineStarts = valueStarts.map((valueStart, index) => {
    const sourceStart = sourceStarts[index] ?? slice.length;
    const sourceLine = slice.slice(sourceStart).split(/\r\n|\n|\r/, 1)[0] ?? '';
    const valueLine = node.value.slice(valueStart).split(/\r\n|\n|\r/, 1)[0] ?? '';
    return { valueStart, fileStart: start + sourceStart + Math.max(0, sourceLine.length - valueLine.length) };
  });
  return (offset) => {
    const line = lineStarts.findLast(({ valueStart }) => valueStart <= offset) ?? {
      valueStart: 0,
      fileStart: start,
    };
    return line.fileStart + offset - line.valueStart;
  };
}

/**
 * Reads the body of a lesson: runs of prose as clean HTML, and activity blocks. Raw HTML, unsafe links and pictures
 * from elsewhere are refused, each with its place.
 */
export function readBody(source: SourceText, text: string, offset: number): Body {
  const tangle = tangledProse(text);
  if (tangle !== null) {
    const span = { from: offset + tangle.from, to: offset + tangle.to };
    const told =
      tangle.fault === 'deep'
        ? ({ code: 'nesting-deep', grade: 'error', ...fileWords.tooDeep() } as const)
        : ({ code: 'prose-tangled', grade: 'error', ...fileWords.tangled() } as const);
    return { parts: [], prose: [], problems: [problemAt(source, span, told)] };
  }
  const root = readMarkdown(text);
  const problems: Problem[] = [];
  const spanOf = (node: Nodes): { from: number; to: number } => ({
    from: offset + (node.position?.start.offset ?? 0),
    to: offset + (node.position?.end.offset ?? 0),
  });
  const report = (
    node: Nodes,
    code: ProblemCode,
    words: { expected: string; received: string; mend: string },
    grade: ProblemGrade = 'error',
  ): void => {
    problems.push(problemAt(source, spanOf(node), { code, grade, ...words }));
  };
  const sliceOf = (node: Nodes): string =>
    text.slice(node.position?.start.offset ?? 0, node.position?.end.offset ?? 0);

  let isDeep = false;
  const words: Passage[] = [];
  for (const { node, depth } of everyNode(root)) {
    if (node.type === 'html') report(node, 'html-refused', fileWords.html(node.value));
    else if ((node.type === 'link' || node.type === 'definition') && !isSafeLink(node.url)) {
      report(node, 'link-unsafe', fileWords.link(node.url));
    } else if (node.type === 'image') report(node, 'picture-refused', fileWords.picture(node.url));
    else if (node.type === 'imageReference')
      report(node, 'picture-refused', fileWords.picture(node.identifier));
    else if (node.type === 'code' && depth > 1 && isFence(sliceOf(node))) {
      report(node, 'block-nested', fileWords.blockNested());
    }
    const passage = prosePassage(node, text, offset);
    if (passage !== null) words.push(passage);
    if (depth > DEEPEST && !isDeep) {
      isDeep = true;
      report(node, 'nesting-deep', fileWords.tooDeep());
    }
  }

  const parts: BodyPart[] = [];
  let prose: RootContent[] = [];
  const definitions = root.children.filter((node) => node.type === 'definition');
  const endProse = (): void => {
    const html = isDeep ? '' : writeHtml([...prose, ...definitions]);
    if (prose.length > 0 && html !== '') parts.push({ part: 'prose', html });
    prose = [];
  };
  for (const node of root.children) {
    const slice = sliceOf(node);
    if (node.type !== 'code' || !isFence(slice)) {
      if (node.type !== 'definition') prose.push(node);
      continue;
    }
    endProse();
    const kindName = node.lang ?? '';
    const { from } = spanOf(node);
    const nameAt = from + Math.max(0, slice.indexOf(kindName));
    if (!isClosed(slice)) report(node, 'block-unclosed', fileWords.blockUnclosed(kindName));
    parts.push({
      part: 'block',
      block: {
        kindName,
        yaml: node.value,
        nameSpan: { from: nameAt, to: nameAt + kindName.length },
        toFile: offsetsOf(node, slice, from),
      },
    });
  }
  endProse();
  return { parts, prose: words, problems };
}
