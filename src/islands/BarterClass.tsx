import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { CLASS_SIZES } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import { openClass } from '../stores/barter-class.ts';
import type { ClassProps } from './barter-class-view.ts';
import { BarterClassHands } from './BarterClassHands.tsx';
import { BarterClassRecord } from './BarterClassRecord.tsx';
import { BarterCards } from './BarterCards.tsx';
import { focusNext } from './focus-next.ts';
import { Hands } from './Hands.tsx';

/** A gathering of the whole class: deal the cards for those who are there, then count what each gained. */
export function BarterClass({ lesson, activity, words, showsWorking }: ClassProps) {
  const store = useMemo(() => openClass(lesson, activity), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const [said, setSaid] = useState('');
  const { deal } = table;
  const focus = (selector: string): void => focusNext(root, [selector]);
  const best = { best: deal.bestTotal, aimless: Math.round(deal.aimlessShare * deal.bestTotal) };
  const dealt = say(words.classDealt, { count: deal.cards.length });
  return (
    <div class="barter" ref={root}>
      <p>{say(words.classHow, { minutes: activity.minutes })}</p>
      <div class="class-deal">
        <span>{say(words.classHowMany)}</span>
        <Hands
          count={table.wanted}
          labels={{
            exact: `${say(words.classHowMany)} ${CLASS_SIZES.least}–${CLASS_SIZES.most}`,
            more: say(words.classMore),
            fewer: say(words.classFewer),
          }}
          onCount={store.want}
        />
        <button
          type="button"
          class="press"
          data-move="deal"
          data-weight="main"
          onClick={() => {
            store.dealCards();
            setSaid(say(words.classDealt, { count: store.$table.get().pupils }));
          }}
        >
          {say(words.classDeal)}
        </button>
        <button type="button" class="press" onClick={() => window.print()}>
          {say(words.classPrint)}
        </button>
      </div>
      <p>
        {say(deal.possible ? words.classPossible : words.classNotPossible)} {say(words.classBest, best)}
      </p>
      <details class="working">
        <summary>{say(words.classPlanShow)}</summary>
        <ul class="pairs numbers" aria-label={say(words.classPlan)}>
          {deal.straightPlan.map((pair) => (
            <li key={pair[0]}>{pair.join(' – ')}</li>
          ))}
        </ul>
      </details>
      <details class="working dealt" open>
        <summary>{dealt}</summary>
        <BarterCards activity={activity} words={words} cards={deal.cards} />
      </details>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <BarterClassRecord activity={activity} words={words} table={table} showsWorking={showsWorking} />
        </section>
      ) : (
        <BarterClassHands words={words} table={table} store={store} />
      )}
      <p class="unseen" role="status">
        {said}
      </p>
      <div class="presses">
        {table.isRead ? (
          <button
            type="button"
            class="press"
            onClick={() => {
              store.backToHands();
              focus('[data-move="read"]');
            }}
          >
            {say(words.classBack)}
          </button>
        ) : (
          <button
            type="button"
            class="press"
            data-move="read"
            onClick={() => {
              store.readRecord();
              focus('[data-record]');
            }}
          >
            {say(words.classRead)}
          </button>
        )}
      </div>
      <p class="small quiet">{say(table.isKept ? words.kept : words.notKept)}</p>
    </div>
  );
}
