import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { scoreCompare, type ComparePair } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { isSaid, openCompare, type Said } from '../stores/compare.ts';
import { ChanceRecord } from './ChanceRecord.tsx';
import { afterOf, alikeOf, beforeOf, chancePlay, questionsOf, saidAlike } from './chance-questions.ts';
import { Choices } from './Choices.tsx';
import { CompareButtons } from './CompareButtons.tsx';
import { CompareReading } from './CompareReading.tsx';
import { likenessText, pitNumber } from '../../shared/telling/compare-words.ts';
import type { CompareProps } from './compare-view.ts';
import { pileColumns, ShufflePile, shufflesPerDot } from './ShufflePile.tsx';
import { SiteList } from './SiteList.tsx';
import { useCompareMoves } from './use-compare-moves.ts';
import { SHUFFLES, useShuffles } from './use-shuffles.ts';
import { WaysToPlay } from './WaysToPlay.tsx';
import { noted } from '../stores/plays.ts';

/** Could chance alone do this? Say first, shuffle and watch the pile grow, say again; pair by pair. */
export function CompareChance({ lesson, activity, words, showsWorking }: CompareProps) {
  const pairs = activity.chance?.pairs ?? [];
  const most = activity.chance?.most ?? 1;
  const questions = useMemo(() => pairs.flatMap(questionsOf), [activity.id]);
  const store = useMemo(() => openCompare(lesson, activity.id, questions), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState(0);
  const moves = useCompareMoves({ root, store, words, questions, nameOf: (question) => question });
  const { said, way } = table;
  const pit = (place: number): string => pitNumber(activity.pits[place]?.cut.id);
  const both = ({ first, second }: ComparePair) => ({ first: pit(first), second: pit(second) });
  const told = ({ likeness }: ComparePair, pile: readonly number[]): string =>
    say(words.pileSaid, {
      likeness: likenessText(likeness, most),
      draws: pile.length,
      atLeast: pile.filter((value) => value >= likeness - 1e-9).length,
      perDot: shufflesPerDot(Math.max(0, ...pileColumns(pile, most))),
    });
  const { piles, growing, shuffle } = useShuffles(activity, (pair, pile) => {
    moves.tell(told(pair, pile));
    moves.focus(`[data-asks="${afterOf(pair)}"] button`);
  });
  const left = questions.filter((question) => !isSaid(said, question)).length;
  const ways = [
    { way: 'alone', name: say(words.wayAlone), how: say(words.howChance) },
    { way: 'pairs', name: say(words.wayPairs), how: say(words.pairsChance) },
    { way: 'hands', name: say(words.wayHands), how: say(words.handsChance) },
  ] as const;
  const pair = pairs[at];
  const pile = pair === undefined ? [] : (piles[pair.id] ?? []);
  const judgements = [
    { answer: 'chance-could', name: say(words['chance-could']) },
    { answer: 'chance-hardly', name: say(words['chance-hardly']) },
  ];
  const alike = [words.alike0, words.alike1, words.alike2, words.alike3, words.alike4].map((name, step) => ({
    answer: String(step),
    name: say(name),
  }));
  const hasSaid = (answers: Said, asked: ComparePair): boolean =>
    isSaid(answers, alikeOf(asked)) && isSaid(answers, beforeOf(asked));
  const canShuffle = pair !== undefined && hasSaid(said, pair) && growing === null;
  const show = (next: number): void => {
    setAt(next);
    moves.tell('');
    moves.focus('[data-pair]');
  };
  return (
    <div class="sort compare" ref={root} data-way={way}>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <ChanceRecord
            {...{ activity, words, showsWorking, said }}
            result={scoreCompare(activity, noted(chancePlay(activity, said)))}
          />
          <CompareReading
            words={words}
            reading={activity.reading}
            doubts={activity.doubts}
            keeps={activity.chance?.keeps ?? null}
          />
          {activity.chance !== null && (
            <SiteList
              words={words}
              site={activity.chance.site}
              most={most}
              nameOf={(kind) => activity.kinds.find(({ id }) => id === kind)?.name ?? kind}
            />
          )}
        </section>
      ) : (
        <>
          <WaysToPlay label={say(words.ways)} ways={ways} chosen={way} onChoose={store.playAs} />
          <p class="small quiet">
            {say(activity.chance?.keeps === 'finds' ? words.keepsFinds : words.keepsBoth)}
          </p>
          <div class="pairs-choice" role="group" aria-label={say(words.pairsLabel)}>
            {pairs.map((each, index) => (
              <button
                key={each.id}
                type="button"
                class="press"
                aria-pressed={index === at}
                data-done={questionsOf(each).every((question) => isSaid(said, question))}
                onClick={() => show(index)}
              >
                {say(words.pairName, both(each))}
              </button>
            ))}
          </div>
          {pair !== undefined && (
            <section class="pair" key={pair.id} aria-labelledby={`${activity.id}-pair`}>
              <h3 id={`${activity.id}-pair`} tabIndex={-1} data-pair={pair.id}>
                {say(words.pairName, both(pair))}
              </h3>
              <div class="pair-table">
                <div class="pair-asks">
                  <Choices
                    {...{ words, table, store }}
                    ask={say(words.alikeAsk, both(pair))}
                    question={alikeOf(pair)}
                    answers={alike}
                  />
                  <Choices
                    {...{ words, table, store }}
                    ask={say(words.beforeAsk)}
                    question={beforeOf(pair)}
                    answers={judgements}
                  />
                  <button
                    type="button"
                    class="press"
                    data-move="shuffle"
                    aria-disabled={!canShuffle}
                    onClick={() => {
                      // As the table is now: a switch may press before the last answer has been drawn.
                      if (hasSaid(store.$table.get().said, pair)) shuffle(pair);
                      else moves.tell(say(words.shuffleFirst));
                    }}
                  >
                    {growing === null
                      ? say(pile.length === 0 ? words.shuffle : words.shuffleMore, { shuffles: SHUFFLES })
                      : say(words.shuffling)}
                  </button>
                </div>
                {pile.length > 0 && (
                  <figure class="pair-pile">
                    <ShufflePile
                      words={words}
                      values={pile}
                      most={most}
                      real={pair.likeness}
                      said={saidAlike(activity, said, pair)}
                    />
                    <figcaption>{told(pair, pile)}</figcaption>
                  </figure>
                )}
              </div>
              {((pile.length > 0 && growing !== pair.id) || isSaid(said, afterOf(pair))) && (
                <Choices
                  {...{ words, table, store }}
                  ask={say(words.afterAsk)}
                  question={afterOf(pair)}
                  answers={judgements}
                />
              )}
              {at < pairs.length - 1 && isSaid(said, afterOf(pair)) && (
                <button type="button" class="press" data-move="next" onClick={() => show(at + 1)}>
                  {say(words.nextPair)}
                </button>
              )}
            </section>
          )}
        </>
      )}
      <p class="sort-said" role="status">
        {moves.said}
      </p>
      <CompareButtons {...{ words, table, moves, left }} hasHand={false} />
    </div>
  );
}
