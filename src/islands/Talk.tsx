import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { tellTalk, type TalkChoice } from '../../shared/activities/scorers.ts';
import { say, type Template } from '../../shared/words/index.ts';
import { isSaid, openTalk, type TalkAsk } from '../stores/talk.ts';
import { ChooseOne } from './ChooseOne.tsx';
import { focusNext } from './focus-next.ts';
import { ReadButtons } from './ReadButtons.tsx';
import { TalkRecord } from './TalkRecord.tsx';
import { TalkVoices } from './TalkVoices.tsx';
import type { TalkProps } from './talk-view.ts';
import { WaysToPlay } from './WaysToPlay.tsx';
import { noted } from '../stores/plays.ts';

/** A talk on screen: take a stand, hear the voices, weigh the evidence, stand again. No answer is right. */
export function Talk({ lesson, activity, words, voices }: TalkProps) {
  const store = useMemo(() => openTalk(lesson, activity), [lesson, activity.id]);
  useLayoutEffect(() => store.pickUp(), [store]);
  const table = useStore(store.$table);
  const root = useRef<HTMLDivElement>(null);
  const { stances, evidence } = activity;
  const hasStances = stances.length > 0;
  const how = (own: Template): string => say(hasStances ? own : words.howNone);
  const ways = [
    { way: 'alone', name: say(words.wayAlone), how: how(words.howAlone) },
    { way: 'pairs', name: say(words.wayPairs), how: how(words.howPairs) },
    { way: 'hands', name: say(words.wayHands), how: how(words.howHands) },
  ] as const;
  const ask = (of: TalkAsk, title: Template, choices: readonly TalkChoice[]) => (
    <ChooseOne
      label={say(title)}
      choices={choices.map(({ id, words: face }) => ({ id, said: face, face }))}
      isHands={table.way === 'hands'}
      counts={table[of]}
      words={{ exact: words.handsFor, more: words.handsMore, fewer: words.handsFewer }}
      onChoose={(id) => store.choose(of, id)}
      onCount={(id, count) => store.countHands(of, id, count)}
    />
  );
  const canRead = isSaid(table.before) || isSaid(table.weighs) || isSaid(table.after);
  const leave = (move: () => void, focus: string): void => {
    move();
    focusNext(root, [focus]);
  };
  return (
    <div class="talk" ref={root}>
      {table.isRead ? (
        <section class="record-card" aria-labelledby={`${activity.id}-title ${activity.id}-record`}>
          <h3 id={`${activity.id}-record`} tabIndex={-1} data-record>
            {say(words.recordTitle)}
          </h3>
          <TalkRecord
            activity={activity}
            words={words}
            isHands={table.way === 'hands'}
            told={tellTalk(
              activity,
              noted({
                activity: activity.id,
                before: table.before,
                after: table.after,
                weighs: table.weighs,
              }),
            )}
          />
        </section>
      ) : (
        <>
          <WaysToPlay label={say(words.ways)} ways={ways} chosen={table.way} onChoose={store.playAs} />
          {hasStances && (
            <section data-asks="before">
              <h3>{say(words.beforeTitle)}</h3>
              {ask('before', words.beforeTitle, stances)}
            </section>
          )}
          <TalkVoices words={words} voices={voices} />
          <section data-asks="weighs">
            <h3>{say(words.evidenceTitle)}</h3>
            <p>{say(words.evidenceHow)}</p>
            {ask('weighs', words.evidenceTitle, evidence)}
          </section>
          {hasStances && (
            <section data-asks="after">
              <h3>{say(words.afterTitle)}</h3>
              {ask('after', words.afterTitle, stances)}
            </section>
          )}
        </>
      )}
      <ReadButtons
        words={words}
        back={words.backToTalk}
        table={table}
        canRead={canRead}
        onRead={() => leave(store.readRecord, '[data-record]')}
        onBack={() => leave(store.backToTalk, '[data-move="read"]')}
        onAgain={() => leave(store.startAgain, '[data-choice], .hands-count')}
      />
    </div>
  );
}
