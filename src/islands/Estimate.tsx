import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { scoreEstimate } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { estimatePlayOf, openEstimate } from '../stores/estimate.ts';
import { ReadButtons } from './ReadButtons.tsx';
import { EstimateEntry } from './EstimateEntry.tsx';
import { EstimateRecord } from './EstimateRecord.tsx';
import { EstimateWays } from './EstimateWays.tsx';
import type { EstimateProps } from './estimate-view.ts';
import { focusNext } from './focus-next.ts';
import { Levers } from './Levers.tsx';
import { noted } from '../stores/plays.ts';

/** An estimate on screen: answer, read the record, then change what it was reckoned with. */
export function Estimate(props: EstimateProps) {
  const { lesson, activity, words } = props;
  const store = useMemo(() => openEstimate(lesson, activity), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const [said, setSaid] = useState('');
  const root = useRef<HTMLDivElement>(null);
  const play = estimatePlayOf(activity, table);
  const result = table.isRead && play !== null ? scoreEstimate(activity, noted(play)) : null;
  // Levers move often and the record does not: it is drawn again only when something else was said.
  const { levers: _levers, isKept: _isKept, ...answer } = table;
  const record = useMemo(
    () => (result === null ? null : <EstimateRecord {...props} result={result} table={table} />),
    [JSON.stringify(answer)],
  );
  const focus = (selector: string): void => {
    focusNext(root, [selector]);
  };
  return (
    <div class="estimate" ref={root} data-way={table.way}>
      {result === null ? (
        <>
          <EstimateWays activity={activity} words={words} table={table} store={store} />
          <EstimateEntry activity={activity} words={words} table={table} store={store} onSaid={setSaid} />
        </>
      ) : (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          {record}
          {activity.levers.length > 0 && <Levers {...props} table={table} store={store} onSaid={setSaid} />}
        </section>
      )}
      <p class={result === null ? 'sort-said' : 'unseen'} role="status">
        {said}
      </p>
      <ReadButtons
        words={words}
        back={words.backToAnswer}
        table={table}
        canRead={play !== null}
        onRead={() => {
          store.change({ isRead: true });
          setSaid('');
          focus('[data-record]');
        }}
        onBack={() => {
          store.change({ isRead: false });
          focus('[data-move="read"]');
        }}
        onAgain={() => {
          store.startAgain();
          setSaid('');
          focus('.ways-way');
        }}
      />
    </div>
  );
}
