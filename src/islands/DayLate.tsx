import { useState } from 'preact/hooks';
import { tellClock, type DayEdit } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import type { SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly made: Made;
  readonly onLate: (edits: readonly DayEdit[], fromSlot: number) => void;
}

/** A bus is late, or something else has come between: the slots to come are planned again. */
export function DayLate({ words, made: { day }, onLate }: Props) {
  const [fromSlot, setFromSlot] = useState(0);
  const [late, setLate] = useState('');
  const [until, setUntil] = useState('');
  const go = (): void => {
    const isSaid = late !== '' && until !== '';
    onLate(isSaid ? [{ path: ['groups', late, 'arrives'], value: until }] : [], fromSlot);
  };
  return (
    <details class="day-late">
      <summary>{say(words.lateTitle)}</summary>
      <p>{say(words.lateLead)}</p>
      <div class="day-fields">
        <label>
          <span>{say(words.lateFrom)}</span>
          <select value={fromSlot} onChange={(event) => setFromSlot(Number(event.currentTarget.value))}>
            {day.slots.map(({ fromMinute }, slot) => (
              <option key={fromMinute} value={slot}>
                {tellClock(fromMinute)}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{say(words.lateGroup)}</span>
          <select value={late} onChange={(event) => setLate(event.currentTarget.value)}>
            <option value="">{say(words.lateNobody)}</option>
            {day.groups.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
        {late !== '' && (
          <label>
            <span>{say(words.lateUntil)}</span>
            <input type="time" value={until} onInput={(event) => setUntil(event.currentTarget.value)} />
          </label>
        )}
      </div>
      <button type="button" class="press" onClick={go}>
        {say(words.lateGo)}
      </button>
    </details>
  );
}
