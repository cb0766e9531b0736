import { tellClock, walkTo } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { DayCard } from './DayCard.tsx';
import { tellDoing, type PaperWords } from './day-view.ts';

/** A card for whoever goes with each group: what comes when, where, and how far the walk is. */
export function DayGroupCards({ words, made }: { readonly words: PaperWords; readonly made: Made }) {
  const { day, plan } = made;
  return (
    <section class="day-sheet day-cards" data-sheet="groups" aria-label={say(words.groups)}>
      {day.groups.map(({ id, name, pupils, arrivesMinute, leavesMinute }, group) => (
        <DayCard
          key={id}
          words={words}
          made={made}
          title={name}
          under={`${say(words.pupils, { count: pupils })}. ${say(words.arrives, { from: tellClock(arrivesMinute), to: tellClock(leavesMinute) })}.`}
          lines={day.slots.map((_, slot) => {
            const doing = plan.groups[group]?.[slot];
            if (doing === undefined || doing.kind === 'away') return null;
            const place =
              doing.kind === 'station'
                ? (day.stations[doing.station]?.place ?? '')
                : doing.kind === 'lunch'
                  ? (day.lunch?.place ?? '')
                  : '';
            const walk = walkTo(day, plan, group, slot);
            const more = [place, walk > 0 ? say(words.walk, { count: walk }) : ''];
            const what = say(tellDoing(day, doing, words));
            if (doing.kind === 'free') return { what: '', more: what };
            return {
              what,
              more: more.filter((part) => part !== '').join(', '),
            };
          })}
        />
      ))}
    </section>
  );
}
