import type { LineMap } from './point.ts';
import type { Fault, Path, Problem } from './problem.ts';
import type { PlacedFault } from './read-yaml.ts';

/** From a place in some data to a place in its file. */
export type Locate = (path: Path, atKey?: boolean) => { readonly from: number; readonly to: number };

/** The text of one file, and how offsets in it become lines and columns. */
export interface SourceText {
  readonly file: string;
  readonly lines: LineMap;
  /** 1 where a byte-order mark stands before the text, else 0: edits count it, columns do not. */
  readonly shift: number;
}

/** A fault with a span of its own as a problem of its file. */
export function problemAt(
  source: SourceText,
  span: { readonly from: number; readonly to: number },
  fault: Omit<PlacedFault, 'span'>,
): Problem {
  const { code, grade, expected, received, mend, replacement } = fault;
  const from = source.lines.at(span.from);
  const to = source.lines.at(Math.max(span.from, span.to));
  const edit =
    replacement === undefined
      ? {}
      : { edit: { from: from.offset + source.shift, to: to.offset + source.shift, text: replacement } };
  return { code, grade, file: source.file, from, to, expected, received, mend, ...edit };
}

/** Faults that know only a path, as problems of their file. */
export const placeFaults = (
  source: SourceText,
  faults: readonly Fault[],
  locate: Locate,
): readonly Problem[] =>
  faults.map((fault) => problemAt(source, locate(fault.path, fault.atKey ?? false), fault));
