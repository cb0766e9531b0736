/** A place in a text: line and column count from 1, offset (UTF-16 units) from 0. */
export interface Point {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

/** Turns offsets into points, for one text. */
export interface LineMap {
  /** The point at an offset; an offset outside the text is brought to its nearest end. */
  readonly at: (offset: number) => Point;
  /** The text of a line (from 1), without its line ending; '' where there is no such line. */
  readonly line: (line: number) => string;
}

/**
 * Reads where the lines of a text begin: `\n`, `\r\n` and a lone `\r` each end a line.
 *
 * @example lineMap('ab\ncd').at(4) // { line: 2, column: 2, offset: 4 }
 */
export function lineMap(text: string): LineMap {
  const starts = [0];
  for (let offset = 0; offset < text.length; offset += 1) {
    const character = text[offset];
    if (character === '\n' || (character === '\r' && text[offset + 1] !== '\n')) starts.push(offset + 1);
  }
  const at = (wanted: number): Point => {
    const inside = Math.min(Math.max(0, wanted), text.length);
    // Between the two halves of a Windows line end there is no place: the line ends before both.
    const offset = text[inside] === '\n' && text[inside - 1] === '\r' ? inside - 1 : inside;
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - (starts[low] ?? 0) + 1, offset };
  };
  const line = (wanted: number): string => {
    const start = starts[wanted - 1];
    if (start === undefined) return '';
    return text.slice(start, starts[wanted] ?? text.length).replace(/[\r\n]+$/, '');
  };
  return { at, line };
}
