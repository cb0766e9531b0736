import { bench as words } from '../../shared/words/en/bench.ts';
import { site } from '../../shared/words/en/site.ts';
import { say } from '../../shared/words/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';

interface Props {
  /** Null while the first check runs. */
  readonly problems: readonly Problem[] | null;
  /** False where the text has changed since it was checked: then no mend can be pressed. */
  readonly isFresh: boolean;
  readonly tookMs: number | null;
  readonly help: string;
  readonly goTo: (problem: Problem) => void;
  readonly mend: (problem: Problem) => void;
}

/** What is wrong, by place: where it is, what was found, and a mend that can be pressed. */
export function ProblemsList({ problems, isFresh, tookMs, help, goTo, mend }: Props) {
  const stops = problems?.filter(({ grade }) => grade === 'error').length ?? 0;
  return (
    <>
      <p role="status" class="lead-count" data-state={isFresh ? 'fresh' : undefined}>
        {problems === null
          ? words.problemsChecking
          : problems.length === 0
            ? words.problemsNone
            : `${say(words.problemsCount, { count: problems.length })}${stops > 0 ? `; ${say(words.problemsStop, { count: stops })}` : ''}.`}
      </p>
      <ol class="lead-problems">
        {(problems ?? []).map((problem) => (
          <li
            key={`${problem.code} ${problem.from.offset} ${problem.to.offset}`}
            class="lead-problem"
            data-grade={problem.grade}
          >
            <p>
              <strong>{problem.grade === 'error' ? site.error : site.caution}</strong>{' '}
              <a class="small" href={`${help}#${problem.code}`}>
                <code>{problem.code}</code>
              </a>
            </p>
            <dl class="small">
              <dt>{site.problemExpected}</dt>
              <dd>{problem.expected}</dd>
              <dt>{site.problemReceived}</dt>
              <dd>{problem.received}</dd>
              <dt>{site.problemMend}</dt>
              <dd>{problem.mend}</dd>
            </dl>
            <div class="lead-acts">
              <button
                type="button"
                class="press small"
                onClick={() => {
                  goTo(problem);
                }}
              >
                {say(words.problemGo, { line: problem.from.line, column: problem.from.column })}
              </button>
              {problem.edit !== undefined && (
                <button
                  type="button"
                  class="press small"
                  data-weight="main"
                  aria-disabled={!isFresh}
                  onClick={() => {
                    if (isFresh) mend(problem);
                  }}
                >
                  {problem.edit.text === ''
                    ? words.problemMendOut
                    : say(words.problemMend, { text: problem.edit.text })}
                </button>
              )}
            </div>
          </li>
        ))}
      </ol>
      {tookMs !== null && (
        <p class="small quiet">{say(words.checkedIn, { ms: Math.max(1, Math.round(tookMs)) })}</p>
      )}
    </>
  );
}
