import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { DayCard } from './DayCard.tsx';
import { groupsAt, type PaperWords } from './day-view.ts';

/** A card for each adult of the day: where they are, with whom, and when they have a slot off. */
export function DayAdultCards({ words, made }: { readonly words: PaperWords; readonly made: Made }) {
  const { day, plan } = made;
  return (
    <section class="day-sheet day-cards" data-sheet="adults" aria-label={say(words.adults)}>
      {day.adults.map(({ id, role, skills }, adult) => (
        <DayCard
          key={id}
          words={words}
          made={made}
          title={role}
          under={skills.join(', ')}
          lines={day.slots.map((_, slot) => {
            const station = plan.crew[adult]?.[slot] ?? null;
            if (station === null) return { what: '', more: say(words.off) };
            const who = groupsAt(plan, station, slot).map((group) => day.groups[group]?.name ?? '');
            const place = day.stations[station]?.place ?? '';
            return { what: day.stations[station]?.name ?? '', more: [place, ...who].join(', ') };
          })}
        />
      ))}
    </section>
  );
}
