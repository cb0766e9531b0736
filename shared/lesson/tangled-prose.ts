/** Where prose is too tangled to read, as offsets; `deep` where lists or quotations are nested beyond all use. */
export interface Tangle {
  readonly from: number;
  readonly to: number;
  readonly fault: 'deep' | 'tangled';
}

// The Markdown reader takes time as the square of these, and no lesson comes near them. Our judgement (ASM), from
// timing runs of every mark at 5,000 and 20,000 characters.
const MOST_LINES = 4000;
const MOST_LINES_TOGETHER = 200;
const MOST_MARKS_TOGETHER = 500;
const MOST_MARKS = 2000;
const MOST_LIST_MARKS = 400;
const DEEPEST_LINE = 20;

const LINE = /([^\r\n]*)(?:\r\n|\n|\r|$)/y;
const FENCE = /^ {0,3}(`{3,}(?=[^`]*$)|~{3,})/;
const CONTAINERS = /^(?:[ \t]*(?:>|[-+*](?=[ \t]|$)|\d{1,9}[.)](?=[ \t]|$)))*/;

const countOf = (text: string, pattern: RegExp): number => text.match(pattern)?.length ?? 0;

/**
 * The first place where prose holds more marks than a reader of Markdown gets through in good time: deep nesting, one
 * paragraph of hundreds of lines, hundreds of brackets and stars. Fenced blocks are not counted; they are not prose.
 *
 * @example tangledProse('A *plain* line') // null
 */
export function tangledProse(text: string): Tangle | null {
  let fence: string | null = null;
  let runFrom = 0;
  let runLines = 0;
  let runMarks = 0;
  let marks = 0;
  let listMarks = 0;
  let lines = 0;
  LINE.lastIndex = 0;
  while (LINE.lastIndex < text.length) {
    const from = LINE.lastIndex;
    const line = LINE.exec(text)?.[1] ?? '';
    const to = from + line.length;
    lines += 1;
    const containers = CONTAINERS.exec(line)?.[0] ?? '';
    const levels = countOf(containers, />|[-+*.)]/g);
    if (levels > DEEPEST_LINE) return { from, to, fault: 'deep' };
    if (lines > MOST_LINES) return { from, to, fault: 'tangled' };
    const opened = FENCE.exec(line)?.[1];
    if (fence !== null) {
      const isClosing = opened?.startsWith(fence) === true && line.trim() === opened;
      if (isClosing) fence = null;
      continue;
    }
    if (opened !== undefined || line.trim() === '') {
      fence = opened ?? null;
      runLines = 0;
      runMarks = 0;
      continue;
    }
    if (runLines === 0) runFrom = from;
    const more = countOf(line, /[[\]*_`<&!\\]/g);
    runLines += 1;
    runMarks += more;
    marks += more;
    listMarks += levels;
    if (
      runLines > MOST_LINES_TOGETHER ||
      runMarks > MOST_MARKS_TOGETHER ||
      marks > MOST_MARKS ||
      listMarks > MOST_LIST_MARKS
    ) {
      return { from: runFrom, to, fault: 'tangled' };
    }
  }
  return null;
}
