/** Asks of one sort, put one at a time. */
export interface OneAtATime<Wanted> {
  /** Puts an ask, or keeps it until the one before is answered. */
  readonly ask: (wanted: Wanted) => void;
  /** The ask under way has been answered: the newest that was kept is put. */
  readonly answered: () => void;
}

/**
 * Lets one ask be under way at a time. Of those that come in the meantime only the newest is put: an answer to the
 * others would be thrown away.
 *
 * @param put Sends an ask on.
 * @example
 * const asks = oneAtATime(post);
 * asks.ask('a'); // put
 * asks.ask('ab');
 * asks.ask('abc');
 * asks.answered(); // puts 'abc'
 */
export function oneAtATime<Wanted>(put: (wanted: Wanted) => void): OneAtATime<Wanted> {
  let isBusy = false;
  let next: { readonly wanted: Wanted } | null = null;
  return {
    ask: (wanted) => {
      if (isBusy) next = { wanted };
      else {
        isBusy = true;
        put(wanted);
      }
    },
    answered: () => {
      const kept = next;
      next = null;
      isBusy = kept !== null;
      if (kept !== null) put(kept.wanted);
    },
  };
}
