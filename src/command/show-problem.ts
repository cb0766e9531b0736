import { lineMap, type Problem } from '../../shared/lesson/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';

const WIDEST = 80;

/**
 * A problem as one line that editors understand, with the line of the file and a caret under the place. A long line
 * is cut to 80 characters round the caret.
 */
export function showProblem(problem: Problem, text: string | null): string {
  const { file, from, to, grade, mend } = problem;
  const first = `${file}:${from.line}:${from.column}: ${grade}: ${commandWords.message(problem)} (${mend})\n`;
  if (text === null) return first;
  const line = lineMap(text.startsWith('\uFEFF') ? text.slice(1) : text)
    .line(from.line)
    .replaceAll('\t', ' ');
  if (line.trim() === '') return first;
  const start = Math.max(0, Math.min(from.column - 1 - WIDEST / 2, line.length - WIDEST));
  const shown = line.slice(start, start + WIDEST);
  const at = from.column - 1 - start;
  const length =
    to.line === from.line ? Math.max(1, Math.min(to.column - from.column, shown.length - at)) : 1;
  const number = String(from.line);
  return `${first} ${number} | ${shown}\n ${' '.repeat(number.length)} | ${' '.repeat(at)}${'^'.repeat(Math.max(1, length))}\n`;
}
