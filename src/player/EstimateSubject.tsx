import type { SubjectView } from './beside-view.ts';
import { DrawnHere } from './DrawnHere.tsx';

/** What an estimate asks about, and what is given: `EstimateSubject.astro` in a pack. */
export function EstimateSubject({ find, given }: SubjectView) {
  return (
    <div class="estimate-subject" data-has={find === null ? 'words' : 'find'}>
      {find !== null && (
        <div class="estimate-find">
          <DrawnHere {...find.drawn} />
          <p class="unseen">{find.blind}</p>
          <p>
            <strong class="estimate-name">{find.name}</strong>
            <span class="numbers small quiet">
              {find.particulars} · <span class="triangle">△</span>&nbsp;{find.smallFind}
            </span>
          </p>
        </div>
      )}
      {given.length > 0 && (
        <dl class="given">
          {given.map(({ name, value }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd class="numbers">{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </div>
  );
}
