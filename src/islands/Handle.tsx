import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { tellHandling } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { metPieces, openHandle } from '../stores/handle.ts';
import { ChooseOne } from './ChooseOne.tsx';
import { Drawing } from './Drawing.tsx';
import { focusNext } from './focus-next.ts';
import { HandlePiece } from './HandlePiece.tsx';
import { HandleRecord } from './HandleRecord.tsx';
import { HandleRules } from './HandleRules.tsx';
import { HandleTray } from './HandleTray.tsx';
import { ReadButtons } from './ReadButtons.tsx';
import type { HandleProps } from './handle-view.ts';
import { WaysToPlay } from './WaysToPlay.tsx';
import { noted } from '../stores/plays.ts';

/** A handling session on screen: a piece at a time, what to look, feel and listen for, then the record. No score. */
export function Handle({ lesson, activity, words, seen }: HandleProps) {
  const store = useMemo(() => openHandle(lesson, activity), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const [said, setSaid] = useState('');
  const { pieces } = activity;
  const piece = pieces[table.at];
  const ways = [
    { way: 'alone', name: say(words.wayAlone), how: say(words.howTo) },
    { way: 'pairs', name: say(words.wayPairs), how: say(words.pairsHow) },
    { way: 'hands', name: say(words.wayHands), how: say(words.handsHow) },
  ] as const;
  const take = (place: number): void => {
    const next = pieces[place];
    if (next === undefined) {
      setSaid(say(words.lastDone));
      return;
    }
    store.take(place);
    setSaid(`${say(words.pieceLine, { number: place + 1, count: pieces.length })}: ${next.plain}`);
  };
  const leave = (move: () => void, focus: string): void => {
    move();
    setSaid('');
    focusNext(root, [focus]);
  };
  return (
    <div class="handle" ref={root}>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-title ${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <HandleRecord
            activity={activity}
            words={words}
            isHands={table.way === 'hands'}
            told={tellHandling(activity, noted({ activity: activity.id, met: table.met, asks: table.asks }))}
          />
        </section>
      ) : (
        <>
          <WaysToPlay label={say(words.ways)} ways={ways} chosen={table.way} onChoose={store.playAs} />
          <HandleRules activity={activity} words={words} />
          <HandleTray pieces={pieces} words={words} table={table} onTake={take} />
          {piece !== undefined && (
            <HandlePiece
              piece={piece}
              place={table.at}
              count={pieces.length}
              words={words}
              seen={seen[piece.id] ?? ''}
              met={table.met[piece.id] ?? []}
              onMeet={(sense) => store.meet(piece.id, sense)}
              onTake={take}
            />
          )}
          <section class="handle-ask">
            <h3>{say(words.askTitle)}</h3>
            <ChooseOne
              label={say(words.askTitle)}
              choices={pieces.map(({ id, plain }, index) => ({
                id,
                said: say(words.piece, { number: index + 1 }),
                face: (
                  <>
                    <Drawing find={id} />
                    <span>
                      <strong class="numbers">{index + 1}</strong> {plain}
                    </span>
                  </>
                ),
              }))}
              isHands={table.way === 'hands'}
              counts={table.asks}
              words={{ exact: words.handsFor, more: words.handsMore, fewer: words.handsFewer }}
              onChoose={store.ask}
              onCount={store.countHands}
            />
          </section>
        </>
      )}
      <p class="sort-said" role="status">
        {said}
      </p>
      <ReadButtons
        words={words}
        back={words.backToTray}
        table={table}
        canRead={metPieces(table).length > 0}
        onRead={() => leave(store.readRecord, '[data-record]')}
        onBack={() => leave(store.backToTray, '[data-move="read"]')}
        onAgain={() => leave(store.startAgain, '.handle-tray [data-piece]')}
      />
    </div>
  );
}
