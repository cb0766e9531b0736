/** What a solver of linear programmes with whole numbers gave back. */
export interface Solved {
  /** `stopped`: out of time; `values` may hold the best found so far. */
  readonly status: 'optimal' | 'infeasible' | 'stopped';
  /** No plan can come below this; null where nothing is proved. */
  readonly bound: number | null;
  /** The columns by name; null where none was found. */
  readonly values: Readonly<Record<string, number>> | null;
}

/** What may be told and asked while a programme is solved. */
export interface Watch {
  /** Each better set of columns as it is found. */
  readonly better?: (values: Readonly<Record<string, number>>) => void;
  /** No plan can come below this, as it rises. */
  readonly bound?: (bound: number) => void;
  /** Columns to begin from; a set that breaks a row is let go. */
  readonly start?: Readonly<Record<string, number>>;
  /** The most seconds for this one programme, where that is less than what is left. */
  readonly seconds?: number;
}

/** A solver that is handed in: a programme in LP text (the CPLEX form), minimised. */
export type Solve = (programme: string, watch?: Watch) => Solved;
