/** What a solver of linear programmes with whole numbers gave back. */
export interface Solved {
  /** `stopped`: out of time; `values` may hold the best found so far. */
  readonly status: 'optimal' | 'infeasible' | 'stopped';
  /** No plan can come below this; null where nothing is proved. */
  readonly bound: number | null;
  /** The columns by name; null where none was found. */
  readonly values: Readonly<Record<string, number>> | null;
}

/** A solver that is handed in: a programme in LP text (the CPLEX form), minimised. */
export type Solve = (programme: string) => Solved;
