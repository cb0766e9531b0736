import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { DayGridHead } from './DayGridHead.tsx';
import type { SheetWords } from './day-view.ts';

interface Props {
  readonly words: Pick<SheetWords, 'crewTitle' | 'adult' | 'off'>;
  readonly made: Made;
}

/** Adults by slot. */
export function DayCrewGrid({ words, made: { day, plan } }: Props) {
  return (
    <div>
      <h3 id="day-crew-title">{say(words.crewTitle)}</h3>
      <div class="day-wide" role="region" aria-labelledby="day-crew-title" tabIndex={0}>
        <table class="day-grid">
          <DayGridHead who={words.adult} slots={day.slots} />
          <tbody>
            {day.adults.map(({ id, role }, adult) => (
              <tr key={id}>
                <th scope="row">{role}</th>
                {day.slots.map(({ fromMinute }, slot) => {
                  const station = plan.crew[adult]?.[slot] ?? null;
                  return (
                    <td key={fromMinute} data-doing={station === null ? 'free' : 'station'}>
                      {station === null ? (
                        <span class="quiet">{say(words.off)}</span>
                      ) : (
                        day.stations[station]?.name
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
