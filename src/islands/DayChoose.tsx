import { useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import { addDay, dropDay, takeDay } from '../stores/day-book.ts';
import type { KeptShelf } from '../stores/day-schema.ts';
import { DayOpenFile } from './DayOpenFile.tsx';
import type { DemoDay, SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly demos: readonly DemoDay[];
  readonly days: KeptShelf['days'];
  readonly isKept: boolean;
}

/** Which day: one of the demo's, one of one's own, or a file. */
export function DayChoose({ words, demos, days, isKept }: Props) {
  const [sure, setSure] = useState<string | null>(null);
  return (
    <section class="day-choose" aria-labelledby="day-choose-title">
      <h2 id="day-choose-title">{say(words.chooseTitle)}</h2>
      {days.length > 0 && (
        <>
          <h3>{say(words.ownTitle)}</h3>
          <ul class="day-shelf">
            {days.map(({ id, title }) => (
              <li key={id}>
                <button type="button" class="press" data-weight="main" onClick={() => takeDay(id)}>
                  {say(words.takeOwn, { title })}
                </button>
                <button
                  type="button"
                  class="press"
                  onClick={() => (sure === id ? dropDay(id) : setSure(id))}
                  onBlur={() => setSure(null)}
                >
                  {sure === id ? say(words.dropSure) : say(words.dropOwn, { title })}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>{say(words.demoTitle)}</h3>
      <ul class="day-shelf">
        {demos.map(({ id, title, text }) => (
          <li key={id}>
            <button type="button" class="press" onClick={() => addDay(title, text)}>
              {say(words.takeDemo, { title })}
            </button>
          </li>
        ))}
        <li>
          <DayOpenFile words={words} />
        </li>
      </ul>
      {!isKept && <p class="caution">{say(words.notKept)}</p>}
    </section>
  );
}
