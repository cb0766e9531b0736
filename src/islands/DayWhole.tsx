import { sheetsAt, tellClock } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import { DaySlots } from './DaySlots.tsx';
import type { Made } from '../stores/day-schema.ts';
import { adultsAt, groupsAt, tellDoing, type PaperWords } from './day-view.ts';

interface Props {
  readonly words: PaperWords;
  readonly made: Made;
  readonly isWet: boolean;
}

/** The whole day on a sheet: groups, stations and adults by slot, and what has to stand where. */
export function DayWhole({ words, made, isWet }: Props) {
  const { day, plan, status, leftOut } = made;
  const numbers = [...day.slots.keys()];
  const first = tellClock(day.slots[0]?.fromMinute ?? 0);
  const last = tellClock(day.slots.at(-1)?.toMinute ?? 0);
  const particulars = [
    { name: words.date, value: day.date ?? say(words.dateBlank) },
    {
      name: words.weather,
      value: isWet ? [say(words.wet), ...leftOut.map((name) => `– ${name}`)].join(' ') : say(words.dry),
    },
    { name: words.bells, value: say(words.fromTo, { from: first, to: last }) },
  ];
  const groups = day.groups.map(({ name }, group) => ({
    name,
    cells: numbers.map((slot) => say(tellDoing(day, plan.groups[group]?.[slot], words))),
  }));
  const stations = day.stations.map(({ name }, station) => ({
    name,
    cells: numbers.map((slot) => {
      const who = groupsAt(plan, station, slot).map((group) => day.groups[group]?.name);
      const crew = adultsAt(plan, station, slot).map((adult) => day.adults[adult]?.role);
      return who.length === 0 ? (
        say(words.nobody)
      ) : (
        <>
          {who.join(', ')}
          <span class="day-crew">{crew.join(', ')}</span>
        </>
      );
    }),
  }));
  return (
    <section class="day-sheet" data-sheet="whole">
      <header class="title-block">
        <h2>{day.title}</h2>
        <dl class="particulars">
          {particulars.map(({ name, value }) => (
            <div key={value}>
              <dt>{say(name)}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </header>
      <DaySlots title={say(words.groupsBySlot)} head={say(words.group)} slots={day.slots} rows={groups} />
      <DaySlots
        title={say(words.stationsBySlot)}
        head={say(words.station)}
        slots={day.slots}
        rows={stations}
      />
      <p class="small">{say(words.lateRule)}</p>
      <p class="small">
        {say(words.draft)} {say(status === 'optimal' ? words.best : words.notBest)}
      </p>
      <h3>{say(words.kitTitle)}</h3>
      <ul class="day-kit">
        {day.stations.map(({ id, name, kit }, station) => (
          <li key={id}>
            <strong>{name}</strong> {kit.length === 0 ? say(words.kitNone) : kit.join(', ')}
            {sheetsAt(day, plan, station) > 0 &&
              `; ${say(words.sheets, { count: sheetsAt(day, plan, station) })}`}
          </li>
        ))}
      </ul>
    </section>
  );
}
