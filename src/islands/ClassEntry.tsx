import { useMemo, useRef } from 'preact/hooks';
import { classBins } from '../../shared/activities/scorers.ts';
import { say, tellNumber } from '../../shared/words/index.ts';
import { Countable } from './Countable.tsx';
import { saidAs, unitName, type EntryProps } from './estimate-view.ts';
import { LineScale } from './LineScale.tsx';
import { DotPile } from './DotPile.tsx';

/** A class's answers: everyone's number keyed in, or hands up for each stretch of the line. */
export function ClassEntry(props: EntryProps) {
  const { words, table, store } = props;
  return (
    <div class="class-entry">
      <div class="ways-choice" role="group" aria-label={say(words.classLabel)}>
        {(['numbers', 'bins'] as const).map((by) => (
          <button
            key={by}
            type="button"
            class="ways-way"
            aria-pressed={table.classBy === by}
            onClick={() => store.change({ classBy: by })}
          >
            {say(by === 'numbers' ? words.classNumbers : words.classBins)}
          </button>
        ))}
      </div>
      {table.classBy === 'numbers' ? <EachNumber {...props} /> : <HandsInBins {...props} />}
    </div>
  );
}

function EachNumber({ activity, words, table, store, onSaid }: EntryProps) {
  // Read off the page, not from state: a number keyed and entered within one frame must not be the one before.
  const typed = useRef<HTMLInputElement>(null);
  const { line } = activity;
  const { numbers } = table;
  const add = (): void => {
    const input = typed.current;
    const number = Number(input?.value);
    if (input === null || !(number > 0)) return;
    const kept = Math.max(line.from, Math.min(line.to, number));
    store.addNumber(kept);
    input.value = '';
    onSaid(say(words.saidAdded, { number: saidAs(kept), count: numbers.length + 1 }));
  };
  return (
    <>
      <form
        class="mark-field"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <label>
          <span class="mark-label">{say(words.classNumbers)}</span>
          <input class="mark-number numbers" type="number" inputMode="decimal" step="any" ref={typed} />
        </label>
        <span class="mark-unit">{unitName(activity, words, 2)}</span>
        <button type="submit" class="press">
          {say(words.addNumber)}
        </button>
      </form>
      <div class="line-rail">
        <DotPile line={line} numbers={numbers} />
        <LineScale line={line} />
      </div>
      <p class="small quiet">{say(words.classAnswers, { count: numbers.length })}</p>
      <ul class="class-numbers">
        {numbers.map((number, index) => (
          // Equal numbers have nothing else to tell them apart.
          <li key={`${index}-${number}`}>
            <button
              type="button"
              class="press numbers"
              aria-label={say(words.removeNumber, { number: saidAs(number) })}
              onClick={() => {
                store.removeNumber(index);
                onSaid(say(words.saidRemoved, { number: saidAs(number) }));
              }}
            >
              {saidAs(number)} <span aria-hidden="true">×</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function HandsInBins({ activity, words, table, store }: EntryProps) {
  const bins = useMemo(() => classBins(activity), [activity]);
  return (
    <ul class="choices">
      {bins.map(({ from, to }, index) => {
        const what = say(words.fromTo, {
          low: tellNumber(from),
          high: tellNumber(to),
          unit: unitName(activity, words, to),
        });
        return (
          <li key={from} class="choice">
            <span class="choice-name numbers">{what}</span>
            <Countable
              words={words}
              what={what}
              count={table.bins[index] ?? 0}
              onCount={(count) => store.countBin(index, count)}
            />
          </li>
        );
      })}
    </ul>
  );
}
