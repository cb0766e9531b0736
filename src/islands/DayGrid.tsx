import { useRef, useState } from 'preact/hooks';
import { tellClock, type DayEdit } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { DayGridHead } from './DayGridHead.tsx';
import { DayPin } from './DayPin.tsx';
import { fixedIndex, tellDoing, type SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly made: Made;
  readonly onPin: (edits: readonly DayEdit[]) => void;
}

interface Cell {
  readonly group: number;
  readonly slot: number;
}

/** Groups by slot; a press on a slot fixes it by hand. */
export function DayGrid({ words, made, onPin }: Props) {
  const { day, plan } = made;
  const [cell, setCell] = useState<Cell | null>(null);
  const root = useRef<HTMLDivElement>(null);
  const close = (): void => {
    const from = cell;
    setCell(null);
    if (from === null) return;
    const name = `[data-cell="${from.group}-${from.slot}"]`;
    requestAnimationFrame(() => root.current?.querySelector<HTMLElement>(name)?.focus());
  };
  return (
    <div ref={root}>
      <h3 id="day-grid-title">{say(words.gridTitle)}</h3>
      <p class="small quiet">{say(words.pinHint)}</p>
      <div class="day-wide" role="region" aria-labelledby="day-grid-title" tabIndex={0}>
        <table class="day-grid">
          <DayGridHead who={words.group} slots={day.slots} />
          <tbody>
            {day.groups.map(({ id, name }, group) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                {day.slots.map(({ fromMinute }, slot) => {
                  const doing = plan.groups[group]?.[slot];
                  const says = say(tellDoing(day, doing, words));
                  const time = tellClock(fromMinute);
                  const isFixed = fixedIndex(day, group, slot) >= 0;
                  return (
                    <td key={fromMinute} data-doing={doing?.kind ?? 'away'}>
                      {doing === undefined || doing.kind === 'away' ? (
                        <span class="quiet">{says}</span>
                      ) : (
                        <button
                          type="button"
                          class="day-cell"
                          data-cell={`${group}-${slot}`}
                          aria-expanded={cell?.group === group && cell.slot === slot}
                          aria-label={say(words.changeCell, { group: name, time, doing: says })}
                          onClick={() => setCell({ group, slot })}
                        >
                          {says}
                          {isFixed && <span class="day-fixed">{say(words.fixedMark)}</span>}
                        </button>
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {cell !== null && (
        <DayPin
          key={`${cell.group}-${cell.slot}`}
          words={words}
          made={made}
          cell={cell}
          onPin={onPin}
          onClose={close}
        />
      )}
    </div>
  );
}
