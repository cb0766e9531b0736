import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';
import type { GatheringActivity } from '../../shared/activities/scorers.ts';
import { standing } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import type { BarterStore, BarterTable, Side } from '../stores/barter.ts';
import { goodWords, nameOf, sideWords, type BarterWords, type RefusalWords } from './barter-view.ts';
import { focusNext } from './focus-next.ts';
import { refusalWords } from './refusal-words.ts';

interface Given {
  readonly root: RefObject<HTMLDivElement>;
  readonly store: BarterStore;
  readonly table: BarterTable;
  readonly activity: GatheringActivity;
  readonly words: BarterWords;
  readonly refusals: RefusalWords;
}

/** The moves of a gathering with what they say and where they leave the focus. */
export interface BarterMoves {
  readonly said: string;
  /** Why the offer came to nothing; null where there is nothing to answer. */
  readonly answer: string | null;
  readonly goTo: (trader: string, byKey: boolean) => void;
  readonly leave: (byKey: boolean) => void;
  readonly ask: (trader: string, byKey: boolean) => void;
  readonly choose: (side: Side, good: string, count: number) => void;
  readonly offer: (byKey: boolean) => void;
  readonly stepBack: () => void;
  readonly countHands: (trader: string, count: number) => void;
  readonly goWhereMost: (byKey: boolean) => void;
  readonly readRecord: () => void;
  readonly backToSwaps: () => void;
  readonly startAgain: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/**
 * Moves by keyboard or switch carry the focus to where the eye goes next: from a name to the things to choose, from a swap
 * back to the names, from the aim to the record. A pointer's moves carry it too,
 * since what was pressed is often gone, but nothing scrolls.
 */
export function useBarterMoves({ root, store, table, activity, words, refusals }: Given): BarterMoves {
  const [said, setSaid] = useState('');
  const { world } = activity;
  const focus = (selector: string, byKey = true): void => {
    focusNext(root, [selector], !byKey);
  };
  const answerTo = ({ with: trader, give, take, refusal }: BarterTable): string | null =>
    trader === null || refusal === null
      ? null
      : refusalWords(refusals, world, { with: trader, give, take }, refusal);
  const goTo = (trader: string, byKey: boolean): void => {
    store.goTo(trader);
    setSaid(say(words.saidHere, { name: nameOf(world, trader) }));
    focus('[data-state="open"] [data-ask], [data-state="open"] .offer-thing', byKey);
  };
  const leave = (byKey: boolean): void => {
    const { with: trader } = store.$table.get();
    store.leave();
    setSaid('');
    if (trader !== null) focus(`[data-trader="${CSS.escape(trader)}"]`, byKey);
  };
  return {
    said,
    answer: answerTo(table),
    goTo,
    leave,
    ask: (trader, byKey) => {
      store.ask(trader);
      setSaid(say(words.hasAsked, { name: nameOf(world, trader) }));
      focus(
        table.with === trader ? '[data-state="open"] .offer-thing' : `[data-trader="${CSS.escape(trader)}"]`,
        byKey,
      );
    },
    choose: store.choose,
    offer: (byKey) => {
      const handover = store.offer();
      const after = store.$table.get();
      if (handover === null) {
        setSaid(
          say(words.saidNo, { name: nameOf(world, after.with ?? ''), sentence: answerTo(after) ?? '' }),
        );
        return;
      }
      const { with: trader, give, take } = handover;
      const row =
        take.length === 0 ? words.saidGave : give.length === 0 ? words.saidReturned : words.saidSwapped;
      const passed = say(row, {
        name: nameOf(world, trader),
        given: sideWords(world, give),
        taken: sideWords(world, take),
      });
      const { isHome } = standing(world, after.swaps);
      setSaid(isHome ? `${passed} ${say(words.saidHome, { aim: goodWords(world, world.aim) })}` : passed);
      focus(isHome ? '[data-move="read"]' : `[data-trader="${CSS.escape(trader)}"]`, byKey);
    },
    stepBack: () => {
      store.stepBack();
      setSaid(say(words.saidBack));
    },
    countHands: store.countHands,
    goWhereMost: (byKey) => {
      const [most] = Object.entries(store.$table.get().hands).toSorted(([, a], [, b]) => b - a);
      if (most !== undefined && most[1] > 0) goTo(most[0], byKey);
    },
    readRecord: () => {
      store.readRecord();
      setSaid('');
      focus('[data-record]');
    },
    backToSwaps: () => {
      store.backToSwaps();
      focus('[data-move="read"]');
    },
    startAgain: () => {
      store.startAgain();
      setSaid('');
      focus('[data-trader]');
    },
    onKeyDown: (event) => {
      if (event.key === 'Escape' && store.$table.get().with !== null) leave(true);
    },
  };
}
