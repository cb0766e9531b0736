import type { Problem } from '../../shared/lesson/index.ts';
import { say } from '../../shared/words/index.ts';
import type { ReaderReply } from '../workers/day-messages.ts';
import type { SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly text: string;
  readonly read: ReaderReply | null;
  readonly onGo: (problem: Problem) => void;
  readonly onText: (text: string) => void;
}

/** What is wrong in the file, as one writes: where, what to write instead, and a press where a press can do it. */
export function DayProblems({ words, text, read, onGo, onText }: Props) {
  if (read === null) return null;
  const { problems } = read;
  const mend = ({ edit }: Problem): void => {
    if (edit !== undefined && read.text === text)
      onText(`${text.slice(0, edit.from)}${edit.text}${text.slice(edit.to)}`);
  };
  return (
    <div class="day-problems" data-count={problems.length}>
      <p role="status">
        {problems.length === 0 ? say(words.problemsNone) : say(words.problems, { count: problems.length })}
      </p>
      <ol>
        {problems.map((problem) => (
          <li key={`${problem.code}-${problem.from.offset}-${problem.received}`}>
            <button type="button" class="day-place" onClick={() => onGo(problem)}>
              {say(words.problemPlace, { line: problem.from.line, column: problem.from.column })}
            </button>
            <p>{say(words.problemExpected, { expected: problem.expected, received: problem.received })}</p>
            <p>{say(words.problemMend, { mend: problem.mend })}</p>
            {problem.edit !== undefined && (
              <button type="button" class="press" onClick={() => mend(problem)}>
                {say(words.problemPress, { text: problem.edit.text })}
              </button>
            )}
          </li>
        ))}
      </ol>
    </div>
  );
}
