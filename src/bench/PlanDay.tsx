import { useState } from 'preact/hooks';
import { slug } from '../../shared/library/slug.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { say } from '../../shared/words/index.ts';
import type { BenchStore, Keeping } from '../stores/bench.ts';
import { $dayBook, addDay, dropDay, openDayBook } from '../stores/day-book.ts';
import type { Checker } from './checker.ts';
import type { DayAsk } from './protocol.ts';
import { saveFile } from './save-file.ts';

interface Props {
  readonly bench: BenchStore;
  readonly checker: Checker;
  readonly wants: Omit<DayAsk, 'ask' | 'number' | 'taken'>;
  readonly canPlan: boolean;
  /** Where the Day sheet is. */
  readonly day: string;
}

/** Keeps what is not yet kept, and says how that went. */
async function keptAs(bench: BenchStore): Promise<Keeping> {
  await bench.keepNow();
  return new Promise((answer) => {
    const stop = bench.$keeping.listen((keeping) => {
      if (keeping === 'waiting') return;
      stop();
      answer(keeping);
    });
    if (bench.$keeping.get() === 'waiting') return;
    stop();
    answer(bench.$keeping.get());
  });
}

/** Puts a day on the shelf of days; false where this browser keeps none. */
function putAway(title: string, text: string): boolean {
  addDay(title, text);
  const { isKept, open } = $dayBook.get();
  if (!isKept && open !== null) dropDay(open);
  return isKept;
}

/** A day made from the visit as it stands, opened on the Day sheet. */
export function PlanDay({ bench, checker, wants, canPlan, day }: Props) {
  const [told, setTold] = useState('');
  const [isThere, setThere] = useState(false);
  const plan = async (): Promise<void> => {
    setTold(words.dayMaking);
    openDayBook();
    const made = await checker.day({ ...wants, taken: $dayBook.get().days.map(({ title }) => title) });
    if (made === null) return setTold(words.dayNot);
    const { title, text, leftOut } = made;
    if (text === null) return setTold(leftOut.join(' '));
    if (!putAway(title, text)) {
      const file = `${slug(title) || 'day'}.yaml`;
      saveFile(file, text, 'text/yaml');
      return setTold(say(words.dayNotKept, { file }));
    }
    const keeping = await keptAs(bench);
    if (keeping === 'kept' || keeping === 'elsewhere') return location.assign(day);
    setThere(true);
    return setTold(words.dayStay);
  };
  return (
    <section class="lead-page" aria-labelledby="bench-day">
      <h2 id="bench-day">{words.dayTitle}</h2>
      <p id="bench-day-lead" class="small quiet">
        {words.dayLead}
      </p>
      <div class="lead-acts">
        <button
          type="button"
          class="press"
          aria-disabled={!canPlan}
          aria-describedby="bench-day-lead"
          onClick={() => {
            if (canPlan) void plan();
            else setTold(words.dayNot);
          }}
        >
          {words.day}
        </button>
      </div>
      <p role="status">{told}</p>
      {isThere && (
        <p>
          <a href={day} target="_blank" rel="noopener">
            {words.dayOpen}
          </a>
        </p>
      )}
    </section>
  );
}
