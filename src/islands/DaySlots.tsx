import type { ComponentChildren } from 'preact';
import { tellClock, type Day } from '../../shared/day/index.ts';

interface Props {
  readonly title: string;
  readonly head: string;
  readonly slots: Day['slots'];
  readonly rows: readonly { readonly name: string; readonly cells: readonly ComponentChildren[] }[];
}

/** Somebody or something by slot. */
export function DaySlots({ title, head, slots, rows }: Props) {
  return (
    <div class="day-wide" role="region" aria-label={title} tabIndex={0}>
      <table class="day-grid day-paper-grid">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">{head}</th>
            {slots.map(({ fromMinute, toMinute }) => (
              <th scope="col" key={fromMinute}>
                {tellClock(fromMinute)}
                <span class="quiet">–{tellClock(toMinute)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, cells }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, slot) => (
                <td key={slots[slot]?.fromMinute}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
