import { changeYaml } from './change-yaml.ts';
import type { Change } from './change.ts';
import { outline, type BlockPiece, type YamlPiece } from './outline.ts';

const lineEndOf = (text: string): string => /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';

/** Puts changed YAML back where it stood, with the file's own line ends and indent. */
function putBack(text: string, piece: YamlPiece, yaml: string): string {
  const lineEnd = lineEndOf(text);
  const written = yaml
    .split('\n')
    .map((line) => (line === '' ? '' : piece.indent + line))
    .join(lineEnd);
  return text.slice(0, piece.yamlFrom) + written + text.slice(piece.yamlTo);
}

function change(text: string, piece: YamlPiece | null, wanted: Change): string | null {
  if (piece === null) return null;
  const yaml = changeYaml(piece.yaml, wanted);
  return yaml === null ? null : putBack(text, piece, yaml);
}

/** Changes the head; null where it cannot be read. */
export const changeHead = (text: string, wanted: Change): string | null =>
  change(text, outline(text).head, wanted);

/** Changes the block that is the part of that number; null where it is none, or cannot be read. */
export function changeBlock(text: string, part: number, wanted: Change): string | null {
  const piece = outline(text).parts[part];
  if (piece?.part !== 'block') return null;
  const changed = change(text, piece, wanted);
  if (changed === null || piece.yamlFrom !== piece.yamlTo) return changed;
  // An empty block has no line of its own yet.
  return null;
}

const closed = (text: string, piece: BlockPiece): string => {
  const slice = text.slice(piece.from, piece.to);
  const fence = /^ *(?:`{3,}|~{3,})/.exec(slice)?.[0] ?? '```';
  return piece.isClosed ? slice : `${slice.replace(/[\r\n]*$/, '')}${lineEndOf(text)}${fence}`;
};

/** The text of each part as it may stand anywhere. */
const partText = (text: string, part: number): string => {
  const piece = outline(text).parts[part];
  if (piece === undefined) return '';
  return piece.part === 'block' ? closed(text, piece) : text.slice(piece.from, piece.to);
};

/** Changes a part with the one before it (-1) or after it (1); null where there is none. */
export function movePart(text: string, part: number, by: -1 | 1): string | null {
  const { parts } = outline(text);
  const [first, second] = by === 1 ? [part, part + 1] : [part - 1, part];
  const [a, b] = [parts[first], parts[second]];
  if (a === undefined || b === undefined) return null;
  const between = text.slice(a.to, b.from);
  const gap = /\S/.test(between) ? between : between || lineEndOf(text).repeat(2);
  return text.slice(0, a.from) + partText(text, second) + gap + partText(text, first) + text.slice(b.to);
}

/** Takes a part out. */
export function removePart(text: string, part: number): string | null {
  const { parts } = outline(text);
  const piece = parts[part];
  if (piece === undefined) return null;
  const lineEnd = lineEndOf(text);
  const before = text.slice(0, piece.from).replace(/[ \t\r\n]*$/, '');
  const after = text.slice(piece.to).replace(/^[ \t\r\n]*/, '');
  const gap = part === 0 ? lineEnd : lineEnd.repeat(2);
  return after === '' ? `${before}${lineEnd}` : `${before}${gap}${after}`;
}

/**
 * Puts words or a block in as the part of that number; at the end where there are fewer.
 *
 * @param source As it stands in a file: prose, or a block with its back-ticks.
 */
export function addPart(text: string, part: number, source: string): string {
  const lineEnd = lineEndOf(text);
  const { parts } = outline(text);
  const wanted = source.trim().replaceAll('\n', lineEnd);
  const next = parts[part];
  if (next !== undefined) {
    const start = text.slice(0, next.from).replace(/[ \t]*$/, '');
    const lead = part === 0 || start.endsWith(lineEnd.repeat(2)) ? '' : lineEnd;
    return `${start}${lead}${wanted}${lineEnd.repeat(2)}${text.slice(start.length)}`;
  }
  const last = parts.at(-1);
  const isOpen = last?.part === 'block' && !last.isClosed;
  const body = isOpen ? text.slice(0, last.from) + closed(text, last) : text.replace(/[ \t\r\n]*$/, '');
  return `${body}${lineEnd.repeat(last === undefined ? 1 : 2)}${wanted}${lineEnd}`;
}

/** Other words in the place of a run of words. */
export function changeProse(text: string, part: number, prose: string): string | null {
  const piece = outline(text).parts[part];
  if (piece?.part !== 'prose') return null;
  return text.slice(0, piece.from) + prose.replaceAll('\n', lineEndOf(text)) + text.slice(piece.to);
}
