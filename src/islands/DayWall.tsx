import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { tellDoing, type PaperWords } from './day-view.ts';
import { DaySlots } from './DaySlots.tsx';

/** The groups alone, as large as the sheet allows: to hang on the wall. */
export function DayWall({ words, made: { day, plan } }: { readonly words: PaperWords; readonly made: Made }) {
  const rows = day.groups.map(({ name }, group) => ({
    name,
    cells: day.slots.map((_, slot) => say(tellDoing(day, plan.groups[group]?.[slot], words))),
  }));
  return (
    <section class="day-sheet" data-sheet="wall">
      <DaySlots title={day.title} head={say(words.group)} slots={day.slots} rows={rows} />
    </section>
  );
}
