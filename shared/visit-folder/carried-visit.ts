import type { OwnFiles } from '../bench/index.ts';

/** A visit as it goes from one device to another: its lesson file, and the lead's own finds and photographs. */
export interface CarriedVisit extends OwnFiles {
  /** What its lesson file is called, without the ending. */
  readonly name: string;
  readonly text: string;
}
