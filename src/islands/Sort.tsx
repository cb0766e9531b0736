import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { scoreSort } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { answered, openSort } from '../stores/sort.ts';
import { FindsBench } from './FindsBench.tsx';
import { Hand } from './Hand.tsx';
import { PitView } from './PitView.tsx';
import { RecordCard } from './RecordCard.tsx';
import type { SortProps } from './sort-view.ts';
import { SortButtons } from './SortButtons.tsx';
import { Trays } from './Trays.tsx';
import { useSortMoves } from './use-sort-moves.ts';
import { Ways } from './Ways.tsx';
import { noted } from '../stores/plays.ts';

/** A sort on screen: lift a find, place it in a tray, read the record. */
export function Sort({ lesson, activity, words, plan, seen, showsWorking, attributes }: SortProps) {
  const store = useMemo(
    () => openSort(lesson, activity, (number) => say(words.trayDefault, { number })),
    [lesson, activity.id],
  );
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const trays = activity.ownTrays ? table.ownTrays.map((tray) => ({ ...tray, hint: '' })) : activity.trays;
  const moves = useSortMoves({ root, store, activity, words, trays });
  const done = answered(table);
  const left = activity.finds.length - done.length;
  const held = activity.finds.find(({ id }) => id === table.hand) ?? null;
  const result = table.isRead
    ? scoreSort(
        activity,
        noted({
          activity: activity.id,
          ...(table.way === 'hands' ? { hands: table.hands } : { placed: table.placed }),
        }),
      )
    : null;
  const gone = new Set(done.filter((find) => find !== table.hand));
  const view = {
    activity,
    words,
    hand: table.hand,
    gone,
    isHands: table.way === 'hands',
    onLift: moves.lift,
  };
  const caption = plan === null ? words.benchCaption : words.pitCaption;

  return (
    <div class="sort" ref={root} data-held={held !== null} data-way={table.way} onKeyDown={moves.onKeyDown}>
      {result === null ? (
        <>
          <Ways activity={activity} words={words} table={table} store={store} />
          <div class="sort-table">
            <figure class="sort-ground">
              {plan === null ? <FindsBench {...view} /> : <PitView {...view} plan={plan} />}
              <figcaption class="small quiet">
                {say(caption, {
                  pit: (activity.pit?.id ?? '').replace(/^P/, ''),
                  lifted: done.length,
                  count: activity.finds.length,
                })}
              </figcaption>
            </figure>
            <div class="sort-work" data-held={held !== null}>
              <Hand
                find={held}
                words={words}
                isDone={left === 0}
                seen={held === null ? '' : (seen[held.id] ?? '')}
              />
              <Trays
                activity={activity}
                words={words}
                table={table}
                store={store}
                trays={trays}
                onPlace={moves.place}
                onLift={moves.lift}
              />
            </div>
          </div>
        </>
      ) : (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <RecordCard
            activity={activity}
            words={words}
            result={result}
            trays={trays}
            isHands={table.way === 'hands'}
            showsWorking={showsWorking}
            attributes={attributes}
          />
        </section>
      )}
      <p class="sort-said" role="status">
        {moves.said}
      </p>
      <SortButtons
        words={words}
        table={table}
        store={store}
        moves={moves}
        left={left}
        canAddTray={activity.ownTrays}
      />
    </div>
  );
}
