import type { Band } from '../library/bands.ts';
import type { Good } from './world.ts';

/** What a lead asks of a world to be made. */
export interface WorldOrder {
  readonly band: Band;
  /** Those the pupil meets, 2 or more. */
  readonly traders: number;
  /** The fewest handovers it must take, 2 or more. */
  readonly chainLength: number;
  /** All of them appear. At least two more than the chain is long. */
  readonly goods: readonly Good[];
  /** The good to come home with; chosen among the goods where it is left out. */
  readonly aim?: string;
}
