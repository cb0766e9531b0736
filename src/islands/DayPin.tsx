import { useEffect, useRef, useState } from 'preact/hooks';
import { tellClock, type DayEdit } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { fixedIndex, type SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly made: Made;
  readonly cell: { readonly group: number; readonly slot: number };
  readonly onPin: (edits: readonly DayEdit[]) => void;
  readonly onClose: () => void;
}

/** One slot of one group, to be fixed by hand or let go again. */
export function DayPin({ words, made, cell, onPin, onClose }: Props) {
  const { day, plan } = made;
  const { group, slot } = cell;
  const doing = plan.groups[group]?.[slot];
  const now =
    doing?.kind === 'station' ? (day.stations[doing.station]?.id ?? 'free') : (doing?.kind ?? 'free');
  const [at, setAt] = useState(now);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);
  const who = day.groups[group];
  const index = fixedIndex(day, group, slot);
  const fix = (): void => {
    const said = { group: who?.id ?? '', slot: slot + 1, at };
    const all = [
      ...day.fixed
        .filter((_, other) => other !== index)
        .map((each) => ({
          group: day.groups[each.group]?.id ?? '',
          slot: each.slot + 1,
          at: each.at.kind === 'station' ? (day.stations[each.at.station]?.id ?? '') : each.at.kind,
        })),
      said,
    ];
    onPin([{ path: ['fixed'], value: all }]);
  };
  const letGo = (): void => onPin([{ path: ['fixed', index], remove: true }]);
  return (
    <section class="day-pin" aria-labelledby="day-pin-title">
      <h4 id="day-pin-title" tabIndex={-1} ref={title}>
        {say(words.pinTitle, { group: who?.name ?? '', time: tellClock(day.slots[slot]?.fromMinute ?? 0) })}
      </h4>
      <label>
        <span>{say(words.pinTo)}</span>
        <select value={at} onChange={(event) => setAt(event.currentTarget.value)}>
          {day.stations.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          {day.lunch !== null && <option value="lunch">{say(words.lunch)}</option>}
          <option value="free">{say(words.free)}</option>
        </select>
      </label>
      <div class="day-presses">
        <button type="button" class="press" data-weight="main" onClick={fix}>
          {say(words.pin)}
        </button>
        {index >= 0 && (
          <button type="button" class="press" onClick={letGo}>
            {say(words.unpin)}
          </button>
        )}
        <button type="button" class="press" onClick={onClose}>
          {say(words.pinClose)}
        </button>
      </div>
    </section>
  );
}
