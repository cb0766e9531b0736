import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';
import type { SortActivity, SortTray } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { answered, type SortStore } from '../stores/sort.ts';
import { focusNext } from './focus-next.ts';
import type { SortWords } from './sort-view.ts';

interface Table {
  readonly root: RefObject<HTMLDivElement>;
  readonly store: SortStore;
  readonly activity: SortActivity;
  readonly words: SortWords;
  readonly trays: readonly SortTray[];
}

/** The moves of a sort with what they say and where they leave the focus. */
export interface SortMoves {
  readonly said: string;
  readonly lift: (find: string, byKey: boolean) => void;
  readonly place: (tray: SortTray, byKey: boolean) => void;
  readonly putBack: () => void;
  readonly stepBack: () => void;
  readonly readRecord: () => void;
  readonly backToTrays: () => void;
  readonly startAgain: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/**
 * Moves by keyboard or switch carry the focus to where the eye goes next: from the find to the trays, from the tray to
 * the next find, from the last find to the record. A pointer's moves leave it alone, so that nothing scrolls.
 */
export function useSortMoves({ root, store, activity, words, trays }: Table): SortMoves {
  const [said, setSaid] = useState('');
  const numberOf = (find: string | null): number =>
    activity.finds.find(({ id }) => id === find)?.smallFind ?? 0;
  const focus = (selector: string): void => {
    focusNext(root, [selector]);
  };
  const focusLeft = (): void => {
    const isDone = answered(store.$table.get()).length === activity.finds.length;
    focus(isDone ? '[data-move="read"]' : '.sort-ground [data-find][data-state="here"]');
  };
  const focusFind = (find: string | null): void => {
    if (find !== null) focus(`[data-find="${CSS.escape(find)}"]`);
  };
  const putBack = (): void => {
    const { hand } = store.$table.get();
    if (hand === null) return;
    store.putBack();
    setSaid(say(words.saidBack, { number: numberOf(hand) }));
    focusFind(hand);
  };
  return {
    said,
    lift: (id, byKey) => {
      const find = activity.finds.find((candidate) => candidate.id === id);
      if (find === undefined) return;
      store.lift(id);
      setSaid(say(words.saidLifted, { number: find.smallFind, plain: find.plain }));
      if (byKey) focus(store.$table.get().way === 'hands' ? '.hands-count' : '.tray-place');
    },
    place: (tray, byKey) => {
      const { hand } = store.$table.get();
      store.place(tray.id);
      setSaid(
        say(words.saidPlaced, {
          number: numberOf(hand),
          tray: trays.find(({ id }) => id === tray.id)?.name ?? '',
        }),
      );
      if (byKey) focusLeft();
    },
    putBack,
    stepBack: () => {
      store.stepBack();
      setSaid('');
    },
    readRecord: () => {
      // As the table is now: a switch may press before the last placing has been drawn.
      if (answered(store.$table.get()).length < activity.finds.length) return;
      store.readRecord();
      setSaid('');
      focus('[data-record]');
    },
    backToTrays: () => {
      store.backToTrays();
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
