import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';
import type { OrderActivity } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { laidCards, type OrderStore } from '../stores/order.ts';
import type { OrderWords } from './order-view.ts';
import { focusNext } from './focus-next.ts';

interface Table {
  readonly root: RefObject<HTMLDivElement>;
  readonly store: OrderStore;
  readonly activity: OrderActivity;
  readonly words: OrderWords;
}

/** The moves of an order with what they say and where they leave the focus. */
export interface OrderMoves {
  readonly said: string;
  readonly lift: (card: string, byKey: boolean) => void;
  /** By the place's index, from 0. */
  readonly place: (index: number, byKey: boolean) => void;
  readonly move: (index: number, by: -1 | 1) => void;
  readonly putBack: () => void;
  readonly stepBack: () => void;
  readonly layMost: () => void;
  readonly readRecord: () => void;
  readonly backToLine: () => void;
  readonly startAgain: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/**
 * Moves by keyboard or switch carry the focus to where the eye goes next: from a card to the first empty place, from a
 * place to the next card, from the last card to the record. A card moved up or down keeps the focus on its button.
 */
export function useOrderMoves({ root, store, activity, words }: Table): OrderMoves {
  const [said, setSaid] = useState('');
  const letterOf = (card: string | null): string =>
    activity.steps.find(({ id }) => id === card)?.letter ?? '';
  const table = () => store.$table.get();
  const focus = (...selectors: readonly string[]): void => {
    focusNext(root, selectors);
  };
  const focusLeft = (): void => {
    const { line } = table();
    if (laidCards(line).length === line.length) focus('[data-move="read"]');
    else focus('.step-cards [data-card]', '.step-cards .hands-count');
  };
  const putBack = (): void => {
    const { hand } = table();
    if (hand === null) return;
    store.putBack();
    setSaid(say(words.saidBack, { letter: letterOf(hand) }));
    focus(`[data-card="${hand}"]`);
  };
  return {
    said,
    lift: (card, byKey) => {
      const step = activity.steps.find(({ id }) => id === card);
      if (step === undefined) return;
      if (table().hand === card) return putBack();
      store.lift(card);
      setSaid(say(words.saidLifted, { letter: step.letter, name: step.name }));
      if (byKey) focus('.line-card[data-state="empty"]');
    },
    place: (index, byKey) => {
      const { hand } = table();
      store.place(index);
      setSaid(say(words.saidPlaced, { letter: letterOf(hand), place: index + 1 }));
      if (byKey) focusLeft();
    },
    move: (index, by) => {
      const card = table().line[index] ?? null;
      if (card === null || index + by < 0 || index + by >= table().line.length) return;
      store.move(index, by);
      setSaid(say(words.saidPlaced, { letter: letterOf(card), place: index + by + 1 }));
      focus(`[data-of="${card}"][data-by="${by}"]`);
    },
    putBack,
    stepBack: () => {
      store.stepBack();
      setSaid('');
    },
    layMost: () => {
      const before = table().line;
      const done = store.layMost();
      const index = table().line.findIndex((card, place) => card !== before[place]);
      if (done === 'laid')
        setSaid(say(words.saidPlaced, { letter: letterOf(table().line[index] ?? null), place: index + 1 }));
      else setSaid(say(done === 'tie' ? words.saidTie : words.saidNoHands));
      if (done === 'laid') focusLeft();
    },
    readRecord: () => {
      store.readRecord();
      setSaid('');
      focus('[data-record]');
    },
    backToLine: () => {
      store.backToLine();
      focus('[data-move="read"]');
    },
    startAgain: () => {
      store.startAgain();
      setSaid('');
      focusLeft();
    },
    onKeyDown: (event) => {
      if (event.key === 'Escape') putBack();
    },
  };
}
