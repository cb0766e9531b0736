import { useStore } from '@nanostores/preact';
import { useLayoutEffect } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import { $dayBook, madeOf, openDayBook } from '../stores/day-book.ts';
import { $sheets, chooseSheets, SHEETS } from '../stores/day-choice.ts';
import { DayAdultCards } from './DayAdultCards.tsx';
import { DayGroupCards } from './DayGroupCards.tsx';
import { DayStationCards } from './DayStationCards.tsx';
import { DayWall } from './DayWall.tsx';
import { DayWhole } from './DayWhole.tsx';
import type { PaperWords } from './day-view.ts';

interface Props {
  readonly words: PaperWords;
  readonly desk: string;
}

/** A text as a CSS string: nothing in it can end the string. */
const cssString = (text: string): string =>
  `"${text.replace(/["\\\n\r\f]/g, (mark) => `\\${mark.codePointAt(0)?.toString(16) ?? ''} `)}"`;

/** All sheets of the plan that is open on this device. */
export function DaySheets({ words, desk }: Props) {
  const { day: kept } = useStore($dayBook);
  const choice = useStore($sheets);
  useLayoutEffect(openDayBook, []);
  const made = madeOf(kept);
  useLayoutEffect(() => {
    if (made !== null) document.documentElement.style.setProperty('--folio', cssString(made.day.title));
  }, [made?.day.title]);
  if (made === null || kept === null) {
    return (
      <p>
        {say(words.none)} <a href={desk}>{say(words.toDesk)}</a>
      </p>
    );
  }
  const isShown = (sheet: (typeof SHEETS)[number]): boolean => choice === 'all' || choice === sheet;
  return (
    <div class="day day-sheets">
      <div class="day-presses not-printed">
        <div class="ways-choice" role="group" aria-label={say(words.choose)}>
          {SHEETS.map((sheet) => (
            <button
              key={sheet}
              type="button"
              class="ways-way"
              aria-pressed={sheet === choice}
              onClick={() => chooseSheets(sheet)}
            >
              {say(words[sheet])}
            </button>
          ))}
        </div>
        <button type="button" class="press" data-weight="main" onClick={() => window.print()}>
          {say(words.print)}
        </button>
        <a class="press" href={desk}>
          {say(words.back)}
        </a>
      </div>
      {made.text !== kept.text && <p class="day-stale not-printed">{say(words.stale)}</p>}
      {isShown('whole') && <DayWhole words={words} made={made} isWet={kept.isWet} />}
      {isShown('wall') && <DayWall words={words} made={made} />}
      {isShown('groups') && <DayGroupCards words={words} made={made} />}
      {isShown('stations') && <DayStationCards words={words} made={made} />}
      {isShown('adults') && made.day.adults.length > 0 && <DayAdultCards words={words} made={made} />}
    </div>
  );
}
