import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import type { PaperWords } from './DaySheets.tsx';
import { tellDoing } from './day-view.ts';
import { SlotTable } from './DayWhole.tsx';

/** The groups alone, as large as the sheet allows: to hang on the wall. */
export function DayWall({ words, made: { day, plan } }: { readonly words: PaperWords; readonly made: Made }) {
  const rows = day.groups.map(({ name }, group) => ({
    name,
    cells: day.slots.map((_, slot) => say(tellDoing(day, plan.groups[group]?.[slot], words))),
  }));
  return (
    <section class="day-sheet" data-sheet="wall">
      <SlotTable title={day.title} head={say(words.group)} slots={day.slots} rows={rows} />
    </section>
  );
}
