import type { Counts } from '../assemblage/index.ts';
import { byPlace, hasErrors, lineMap, problemAt, type Problem, type ProblemCode } from '../lesson/index.ts';
import { countsWords } from '../words/en/table-problems.ts';
import { readCsv, type Cell } from './read-csv.ts';

/** More finds than this cannot be dealt in a time anyone would wait. ASM. */
const MOST_FINDS = 1_000_000;

/**
 * Reads a table of counts (RFC 4180): first row the kinds, after a first cell that is passed over; then a row a pit, its name first.
 *
 * Every problem of the file is told; `counts` is null where one of them is an error.
 * @example readCounts('c.csv', 'pit,flake\nP1,12').counts?.rows // [[12]]
 */
export function readCounts(
  file: string,
  text: string,
): { readonly counts: Counts | null; readonly problems: readonly Problem[] } {
  const shift = text.startsWith('\uFEFF') ? 1 : 0;
  const source = { file, lines: lineMap(text.slice(shift)), shift };
  const problems: Problem[] = [];
  const report = (
    { from, to }: Pick<Cell, 'from' | 'to'>,
    code: ProblemCode,
    words: { readonly expected: string; readonly received: string; readonly mend: string },
  ): void => {
    const span = { from: Math.max(0, from - shift), to: Math.max(0, to - shift) };
    problems.push(problemAt(source, span, { code, grade: 'error', ...words }));
  };
  const names = (cells: readonly Cell[], what: 'kind' | 'pit'): string[] => {
    const seen = new Set<string>();
    return cells.map((cell) => {
      const name = cell.text.trim();
      if (name === '') report(cell, 'cell-unreadable', countsWords.nameless(what));
      else if (seen.has(name)) {
        report(cell, what === 'kind' ? 'column-repeated' : 'id-repeated', countsWords.repeated(what, name));
      }
      seen.add(name);
      return name;
    });
  };

  const { rows, unclosedAt } = readCsv(text);
  if (unclosedAt !== null) {
    report({ from: unclosedAt, to: unclosedAt + 1 }, 'cell-unreadable', countsWords.quoteUnclosed());
  }
  const [header = [], ...body] = rows;
  if (header.length < 2 || body.length === 0) report({ from: 0, to: 0 }, 'file-empty', countsWords.empty());
  const kinds = names(header.slice(1), 'kind');
  const pits = names(
    body.flatMap((row) => row[0] ?? []),
    'pit',
  );
  let all = 0;
  const counts = body.map((row) => {
    const [first, ...cells] = row;
    if (row.length !== header.length && first !== undefined && header.length >= 2) {
      report(first, 'row-ragged', countsWords.ragged(row.length, header.length));
      return [];
    }
    return cells.map((cell, kind) => {
      const written = cell.text.trim();
      if (!/^\d{1,9}$/.test(written)) {
        report(cell, 'cell-unreadable', countsWords.notCount(kinds[kind] ?? '', written));
        return 0;
      }
      const isNewlyOver = all <= MOST_FINDS && all + Number(written) > MOST_FINDS;
      all += Number(written);
      if (isNewlyOver) report(cell, 'value-unfit', countsWords.tooMany(MOST_FINDS));
      return Number(written);
    });
  });
  return {
    counts: hasErrors(problems) ? null : { pits, kinds, rows: counts },
    problems: problems.toSorted(byPlace),
  };
}
