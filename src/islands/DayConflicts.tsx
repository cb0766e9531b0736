import type { ToldRule } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { SheetWords } from './day-view.ts';
import type { Planning } from './use-day-planner.ts';

interface Props {
  readonly words: SheetWords;
  readonly planning: Planning;
  readonly onAllow: (rule: ToldRule) => void;
}

/** Why there is no such day, and what would free it: one press a demand. */
export function DayConflicts({ words, planning, onAllow }: Props) {
  if (planning.kind !== 'impossible') return null;
  const { reasons, rules, isLeast, leastMissed } = planning;
  return (
    <section class="day-conflict" aria-labelledby="day-conflict-title" role="alert">
      <h3 id="day-conflict-title">{say(words.impossibleTitle)}</h3>
      {reasons.length > 0 && (
        <>
          <h4>{say(words.countedTitle)}</h4>
          <ul>
            {reasons.map(({ says }) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
        </>
      )}
      {rules.length > 0 && (
        <>
          <h4>{say(isLeast === true ? words.conflictLeast : words.conflictSome)}</h4>
          <ul class="day-demands">
            {rules.map((rule) => (
              <li key={rule.says}>
                <p>{rule.says}</p>
                {rule.edits === null ? (
                  <p class="quiet">{rule.frees}</p>
                ) : (
                  <button type="button" class="press" onClick={() => onAllow(rule)}>
                    {say(words.allow, { frees: rule.frees })}
                  </button>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
      {leastMissed !== null && leastMissed > 0 && <p>{say(words.leastMissed, { count: leastMissed })}</p>}
    </section>
  );
}
