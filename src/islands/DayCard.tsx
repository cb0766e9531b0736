import type { ComponentChildren } from 'preact';
import { tellClock } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import type { PaperWords } from './day-view.ts';

interface Props {
  readonly words: PaperWords;
  readonly made: Made;
  readonly title: string;
  readonly under: string;
  /** What stands at each slot; null where the card has nothing to say of it. */
  readonly lines: readonly ({ readonly what: string; readonly more: string } | null)[];
  readonly children?: ComponentChildren;
}

/** A card to carry: one group, station or adult through the day. */
export function DayCard({ words, made: { day }, title, under, lines, children }: Props) {
  return (
    <article class="day-card">
      <h3>{title}</h3>
      <p class="small quiet">{under}</p>
      <dl>
        {lines.map((line, slot) => {
          const bells = day.slots[slot];
          if (line === null || bells === undefined) return null;
          return (
            <div key={bells.fromMinute}>
              <dt class="numbers">
                {say(words.fromTo, { from: tellClock(bells.fromMinute), to: tellClock(bells.toMinute) })}
              </dt>
              <dd>
                {line.what !== '' && <strong>{line.what}</strong>}
                {line.more !== '' && <span class="quiet">{line.more}</span>}
              </dd>
            </div>
          );
        })}
      </dl>
      {children}
      <p class="day-card-foot small quiet">{day.title}</p>
    </article>
  );
}
