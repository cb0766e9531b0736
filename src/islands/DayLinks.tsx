import { dayCalendar } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { fileName, saveAs, type SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly made: Made;
  readonly links: { readonly sheets: string; readonly now: string; readonly dropIn: string };
}

/** What comes out of a plan: sheets, the view of the moment, a calendar. */
export function DayLinks({ words, made: { day, plan }, links }: Props) {
  const save = (): void => {
    if (day.date === null) return;
    const stamp = new Date().toISOString().replace(/[-:]|\.\d+/g, '');
    const date = day.date.replaceAll('-', '');
    const text = dayCalendar(day, plan, { date, stamp, lunchWord: say(words.lunch) });
    saveAs(`${fileName(day.title)}.ics`, 'text/calendar', text);
  };
  return (
    <section aria-labelledby="day-out-title">
      <h3 id="day-out-title">{say(words.outTitle)}</h3>
      <div class="day-presses">
        <a class="press" data-weight="main" href={links.sheets}>
          {say(words.sheetsLink)}
        </a>
        <a class="press" href={links.now}>
          {say(words.nowLink)}
        </a>
        <button type="button" class="press" aria-disabled={day.date === null} onClick={save}>
          {say(words.calendar)}
        </button>
      </div>
      <p>
        <a href={links.dropIn}>{say(words.dropInLink)}</a>
      </p>
      {day.date === null && <p class="small quiet">{say(words.calendarNoDate)}</p>}
    </section>
  );
}
