import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { scoreCompare } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { isSaid, openCompare } from '../stores/compare.ts';
import { CompareButtons } from './CompareButtons.tsx';
import { CompareReading } from './CompareReading.tsx';
import { placeName } from '../../shared/telling/compare-words.ts';
import type { CompareProps } from './compare-view.ts';
import { Drawing } from './Drawing.tsx';
import { HandsFor } from './HandsFor.tsx';
import { PlacesRecord } from './PlacesRecord.tsx';
import { useCompareMoves } from './use-compare-moves.ts';
import { WaysToPlay } from './WaysToPlay.tsx';
import { noted } from '../stores/plays.ts';

/** In both pits, or only in one: choose a kind, then its place; read the record. */
export function ComparePlaces({ lesson, activity, words, showsWorking }: CompareProps) {
  const questions = useMemo(() => activity.kinds.map(({ id }) => id), [activity.id]);
  const store = useMemo(() => openCompare(lesson, activity.id, questions), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const nameOf = (kind: string): string => activity.kinds.find(({ id }) => id === kind)?.name ?? kind;
  const moves = useCompareMoves({ root, store, words, questions, nameOf });
  const { hand, said, way } = table;
  const isHands = way === 'hands';
  const left = questions.filter((question) => !isSaid(said, question)).length;
  const lying = activity.kinds.filter(({ id }) => id === hand || isHands || !isSaid(said, id));
  const ways = [
    { way: 'alone', name: say(words.wayAlone), how: say(words.howPlaces) },
    { way: 'pairs', name: say(words.wayPairs), how: say(words.pairsPlaces) },
    { way: 'hands', name: say(words.wayHands), how: say(words.handsPlaces) },
  ] as const;
  return (
    <div class="sort compare" ref={root} data-held={hand !== null} data-way={way} onKeyDown={moves.onKeyDown}>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <PlacesRecord
            {...{ activity, words, showsWorking, said }}
            result={scoreCompare(activity, noted({ activity: activity.id, places: said }))}
          />
          <CompareReading
            words={words}
            reading={activity.reading}
            doubts={activity.doubts}
            keeps={activity.chance?.keeps ?? null}
          />
        </section>
      ) : (
        <>
          <WaysToPlay label={say(words.ways)} ways={ways} chosen={way} onChoose={store.playAs} />
          <div class="compare-work">
            <section class="compare-kinds">
              <h3>{say(words.kindsTitle)}</h3>
              {lying.length === 0 && <p>{say(words.kindsDone)}</p>}
              <ul class="bench">
                {lying.map(({ id, name }) => (
                  <li key={id}>
                    <button
                      type="button"
                      class="bench-find"
                      data-question={id}
                      data-state={isSaid(said, id) ? 'counted' : 'here'}
                      aria-pressed={id === hand}
                      onClick={(event) => moves.lift(id, event.detail === 0)}
                    >
                      <Drawing find={id} />
                      <span class="compare-name">{name}</span>
                    </button>
                  </li>
                ))}
              </ul>
            </section>
            <section class="compare-places">
              <h3>{say(words.placesTitle)}</h3>
              <div class="trays">
                {activity.places?.offered.map((place) => {
                  const name = placeName(activity, words, place);
                  return (
                    <div key={place} class="tray" data-state={hand === null ? 'shut' : 'open'}>
                      {hand === null || isHands ? (
                        <p class="tray-head">
                          <span class="tray-name">{name}</span>
                        </p>
                      ) : (
                        <button
                          type="button"
                          class="tray-head tray-place"
                          data-place={place}
                          aria-label={say(words.putHere, { place: name })}
                          onClick={(event) => moves.place(place, name, event.detail === 0)}
                        >
                          <span class="tray-name">{name}</span>
                        </button>
                      )}
                      {isHands ? (
                        hand === null ? (
                          <p class="hands-none quiet">–</p>
                        ) : (
                          <HandsFor
                            words={words}
                            answer={name}
                            count={said[hand]?.[place] ?? 0}
                            onCount={(hands) => store.countHands(hand, place, hands)}
                          />
                        )
                      ) : (
                        <div class="tray-finds">
                          {activity.kinds
                            .filter(({ id }) => id !== hand && (said[id]?.[place] ?? 0) > 0)
                            .map(({ id, name: kind }) => (
                              <button
                                key={id}
                                type="button"
                                class="tray-find"
                                aria-label={say(words.liftAgain, { kind })}
                                onClick={(event) => moves.lift(id, event.detail === 0)}
                              >
                                <Drawing find={id} />
                              </button>
                            ))}
                        </div>
                      )}
                    </div>
                  );
                })}
              </div>
            </section>
          </div>
        </>
      )}
      <p class="sort-said" role="status">
        {moves.said}
      </p>
      <CompareButtons {...{ words, table, moves, left }} hasHand />
    </div>
  );
}
