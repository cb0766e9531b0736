import { sheetsAt } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { DayCard } from './DayCard.tsx';
import { adultsAt, groupsAt, type PaperWords } from './day-view.ts';

/** A card for each station: who comes when, with whom, and what has to stand there. */
export function DayStationCards({ words, made }: { readonly words: PaperWords; readonly made: Made }) {
  const { day, plan } = made;
  return (
    <section class="day-sheet day-cards" data-sheet="stations" aria-label={say(words.stations)}>
      {day.stations.map(({ id, name, place, kit }, station) => {
        const sheets = sheetsAt(day, plan, station);
        return (
          <DayCard
            key={id}
            words={words}
            made={made}
            title={name}
            under={place}
            lines={day.slots.map((_, slot) => {
              const who = groupsAt(plan, station, slot);
              const crew = adultsAt(plan, station, slot).map((adult) => day.adults[adult]?.role ?? '');
              if (who.length === 0) return { what: '', more: say(words.nobody) };
              const names = who.map((group) =>
                say(words.whoLine, {
                  group: day.groups[group]?.name ?? '',
                  pupils: day.groups[group]?.pupils ?? 0,
                }),
              );
              return { what: names.join(', '), more: crew.join(', ') };
            })}
          >
            {(kit.length > 0 || sheets > 0) && (
              <>
                <h4>{say(words.kit)}</h4>
                <p>{[...kit, ...(sheets > 0 ? [say(words.sheets, { count: sheets })] : [])].join(', ')}</p>
                <p class="small">{say(words.resets)}</p>
              </>
            )}
          </DayCard>
        );
      })}
    </section>
  );
}
