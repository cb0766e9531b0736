import type { Problem } from '../../../shared/lesson/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { site } from '../../../shared/words/en/site.ts';
import { say } from '../../../shared/words/index.ts';

/** What is wrong in the lead's own site files, each at its place. */
export function OwnProblems({ problems }: { readonly problems: readonly Problem[] }) {
  if (problems.length === 0) return null;
  return (
    <>
      <h2>{words.problemsTitle}</h2>
      <ul class="photo-problems small">
        {problems.map(({ file, from, code, expected, received, mend }) => (
          <li key={`${file} ${code} ${from.offset}`}>
            <strong>{say(words.problemAt, { file, line: from.line, column: from.column })}</strong>
            <dl>
              <dt>{site.problemExpected}</dt>
              <dd>{expected}</dd>
              <dt>{site.problemReceived}</dt>
              <dd>{received}</dd>
              <dt>{site.problemMend}</dt>
              <dd>{mend}</dd>
            </dl>
          </li>
        ))}
      </ul>
    </>
  );
}
