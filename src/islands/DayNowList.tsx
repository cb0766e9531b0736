import type { Day, DayPlan } from '../../shared/day/index.ts';
import { say, type Template } from '../../shared/words/index.ts';
import { adultsAt, groupsAt, type NowWords, type PaperWords } from './day-view.ts';

interface Props {
  readonly words: NowWords;
  readonly paperWords: PaperWords;
  readonly day: Day;
  readonly plan: DayPlan;
  readonly slot: number;
}

/** Who is where in a slot. */
export function DayNowList({ words, day, plan, slot }: Props) {
  const names = (groups: readonly number[]): string =>
    groups.map((group) => day.groups[group]?.name ?? '').join(', ');
  const doing = (kind: 'lunch' | 'free'): readonly number[] =>
    [...day.groups.keys()].filter((group) => plan.groups[group]?.[slot]?.kind === kind);
  const others: readonly (readonly [Template, readonly number[]])[] = [
    [words.eating, doing('lunch')],
    [words.withNothing, doing('free')],
  ];
  return (
    <dl class="day-now-list">
      {day.stations.map(({ id, name, place }, station) => {
        const who = groupsAt(plan, station, slot);
        if (who.length === 0) return null;
        const crew = adultsAt(plan, station, slot).map((adult) => day.adults[adult]?.role ?? '');
        return (
          <div key={id}>
            <dt>
              {name} <span class="quiet small">{place}</span>
            </dt>
            <dd>
              <strong>{names(who)}</strong>
              {crew.length > 0 && <span class="quiet small">{crew.join(', ')}</span>}
            </dd>
          </div>
        );
      })}
      {others.map(([name, groups]) =>
        groups.length === 0 ? null : (
          <div key={say(name)}>
            <dt>{say(name)}</dt>
            <dd>
              <strong>{names(groups)}</strong>
            </dd>
          </div>
        ),
      )}
    </dl>
  );
}
