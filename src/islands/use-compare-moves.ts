import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import { isSaid, type CompareStore } from '../stores/compare.ts';
import type { CompareWords } from '../../shared/telling/compare-words.ts';
import { focusNext } from './focus-next.ts';

interface Table {
  readonly root: RefObject<HTMLDivElement>;
  readonly store: CompareStore;
  readonly words: CompareWords;
  /** In the order in which they are gone through. */
  readonly questions: readonly string[];
  readonly nameOf: (question: string) => string;
}

/** The moves of a comparison with what they say and where they leave the focus. */
export interface CompareMoves {
  readonly said: string;
  readonly tell: (sentence: string) => void;
  /** Puts the focus on the first of these that is there once the new state is drawn. */
  readonly focus: (...selectors: readonly string[]) => void;
  readonly lift: (question: string, byKey: boolean) => void;
  readonly place: (answer: string, name: string, byKey: boolean) => void;
  readonly putBack: () => void;
  readonly stepBack: () => void;
  readonly readRecord: () => void;
  readonly backToPits: () => void;
  readonly startAgain: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/**
 * Moves by keyboard or switch carry the focus to where the eye goes next: from a kind to the first place, from a place to the
 * next kind, from the last kind to the record.
 */
export function useCompareMoves({ root, store, words, questions, nameOf }: Table): CompareMoves {
  const [said, setSaid] = useState('');
  const table = () => store.$table.get();
  const focus = (...selectors: readonly string[]): void => {
    focusNext(root, selectors);
  };
  const focusLeft = (): void => {
    const next = questions.find((question) => !isSaid(table().said, question));
    if (next === undefined) focus('[data-move="read"]');
    else focus(`[data-question="${next}"]`);
  };
  const putBack = (): void => {
    const { hand } = table();
    if (hand === null) return;
    store.putBack();
    setSaid(say(words.saidBack, { kind: nameOf(hand) }));
    focus(`[data-question="${hand}"]`);
  };
  return {
    said,
    tell: setSaid,
    focus,
    lift: (question, byKey) => {
      if (table().hand === question) return putBack();
      store.lift(question);
      setSaid(say(words.saidLifted, { kind: nameOf(question) }));
      if (byKey) focus('[data-place]');
    },
    place: (answer, name, byKey) => {
      const { hand } = table();
      if (hand === null) return;
      store.answer(hand, answer);
      setSaid(say(words.saidPlaced, { kind: nameOf(hand), place: name }));
      if (byKey) focusLeft();
    },
    putBack,
    stepBack: () => {
      store.stepBack();
      setSaid('');
    },
    readRecord: () => {
      // As the table is now: a switch may press before the last answer has been drawn.
      if (questions.some((question) => !isSaid(table().said, question))) return;
      store.readRecord();
      setSaid('');
      focus('[data-record]');
    },
    backToPits: () => {
      store.backToPits();
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
