import { tellClock, type Day } from '../../shared/day/index.ts';
import { say, type Template } from '../../shared/words/index.ts';

interface Props {
  /** What the rows are. */
  readonly who: Template;
  readonly slots: Day['slots'];
}

/** The head of a table by slots: what its rows are, then the bells. */
export function DayGridHead({ who, slots }: Props) {
  return (
    <thead>
      <tr>
        <th scope="col">{say(who)}</th>
        {slots.map(({ fromMinute }) => (
          <th scope="col" key={fromMinute}>
            {tellClock(fromMinute)}
          </th>
        ))}
      </tr>
    </thead>
  );
}
