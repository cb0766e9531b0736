import { useStore } from '@nanostores/preact';
import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import { momentOf, tellClock, type Day, type DayPlan } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import { $dayBook, madeOf, openDayBook } from '../stores/day-book.ts';
import { DayNowList } from './DayNowList.tsx';
import type { NowWords, PaperWords } from './day-view.ts';

interface Props {
  readonly words: NowWords;
  readonly paperWords: PaperWords;
  readonly desk: string;
}

/** How often the clock is looked at, in milliseconds. */
const LOOK_MS = 10_000;

const minuteNow = (): number => {
  const now = new Date();
  return now.getHours() * 60 + now.getMinutes();
};
const dateNow = (): string => {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** The heading of the moment. It alone is told to a screen reader, once a bell; minutes are only shown. */
function heading(words: NowWords, day: Day, minute: number): string {
  const { kind, slot, next } = momentOf(day, minute);
  const from = tellClock(day.slots[next ?? 0]?.fromMinute ?? 0);
  if (kind === 'before') return say(words.before, { from });
  if (kind === 'between') return say(words.between, { from });
  if (kind === 'after') return say(words.after);
  const bells = day.slots[slot ?? 0];
  return say(words.now, { from: tellClock(bells?.fromMinute ?? 0), to: tellClock(bells?.toMinute ?? 0) });
}

function Next({ words, paperWords, day, plan, next }: NextProps) {
  const bells = day.slots[next];
  return (
    <section class="day-now-next">
      <h3>
        {say(words.next, { from: tellClock(bells?.fromMinute ?? 0), to: tellClock(bells?.toMinute ?? 0) })}
      </h3>
      <DayNowList words={words} paperWords={paperWords} day={day} plan={plan} slot={next} />
    </section>
  );
}

interface NextProps extends Omit<Props, 'desk'> {
  readonly day: Day;
  readonly plan: DayPlan;
  readonly next: number;
}

/** What runs now, what comes next, and how long it is until the bell: for a phone in a field. */
export function DayNow({ words, paperWords, desk }: Props) {
  const { day: kept } = useStore($dayBook);
  const [clock, setClock] = useState(0);
  const [seeAt, setSeeAt] = useState<number | null>(null);
  useLayoutEffect(() => {
    openDayBook();
    setClock(minuteNow());
  }, []);
  useEffect(() => {
    const look = setInterval(() => setClock(minuteNow()), LOOK_MS);
    return () => clearInterval(look);
  }, []);
  const made = madeOf(kept);
  if (made === null) {
    return (
      <p>
        {say(paperWords.none)} <a href={desk}>{say(paperWords.toDesk)}</a>
      </p>
    );
  }
  const { day, plan } = made;
  const minute = seeAt ?? clock;
  const { kind, slot, next, minutesLeft } = momentOf(day, minute);
  return (
    <div class="day day-now">
      <p class="small quiet">{day.title}</p>
      <div role="status">
        <h2>{heading(words, day, minute)}</h2>
      </div>
      {minutesLeft !== null && (
        <p class="day-left numbers">
          {say(kind === 'slot' ? words.left : words.until, { count: minutesLeft })}
        </p>
      )}
      {slot !== null && (
        <DayNowList words={words} paperWords={paperWords} day={day} plan={plan} slot={slot} />
      )}
      {next !== null && <Next words={words} paperWords={paperWords} day={day} plan={plan} next={next} />}
      {day.date !== null && day.date !== dateNow() && (
        <p class="small quiet">{say(words.otherDate, { date: day.date })}</p>
      )}
      <div class="day-presses day-see">
        <label class="day-field">
          <span>{say(words.seeAt)}</span>
          <input
            type="time"
            value={tellClock(minute)}
            onInput={(event) => {
              const [hours, minutes] = event.currentTarget.value.split(':').map(Number);
              if (hours !== undefined && minutes !== undefined) setSeeAt(hours * 60 + minutes);
            }}
          />
        </label>
        {seeAt !== null && (
          <button type="button" class="press" onClick={() => setSeeAt(null)}>
            {say(words.clock)}
          </button>
        )}
        <a class="press" href={desk}>
          {say(paperWords.back)}
        </a>
      </div>
    </div>
  );
}
