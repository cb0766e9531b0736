import type { ChanceTally, Judgement, Keeps, KindPlace, Likeness, SiteView } from '../../assemblage/index.ts';
import type { FindToDraw, PitToCut } from '../../drawing/index.ts';
import type { ActivityBase } from '../kind.ts';

/** A kind of find, drawn as one example of it, with how many pieces each pit holds, in the order of the pits. */
export interface CompareKind {
  readonly id: string;
  readonly name: string;
  /** The small-find number of the example drawn. */
  readonly number: number;
  readonly drawing: FindToDraw;
  readonly counts: readonly number[];
}

/** Where each kind asked about lies, seen from the first two pits. */
export interface AskedPlaces {
  readonly record: Readonly<Record<string, KindPlace>>;
  /** Places the record uses: no other is offered. */
  readonly offered: readonly KindPlace[];
}

/** Two pits, how alike they are and what chance says of it. Pits by their places in the list. */
export interface ComparePair {
  /** "P3-P5". */
  readonly id: string;
  readonly first: number;
  readonly second: number;
  readonly likeness: number;
  readonly tally: ChanceTally;
  readonly record: Judgement;
}

export interface AskedChance {
  readonly by: Likeness;
  /** The top of its scale: 200 by Brainerd-Robinson, else 1. */
  readonly most: 1 | 200;
  readonly keeps: Keeps;
  readonly pairs: readonly ComparePair[];
  readonly site: SiteView;
}

export interface CompareActivity extends ActivityBase {
  readonly kind: 'compare';
  readonly question: string | null;
  readonly pits: readonly { readonly cut: PitToCut; readonly finds: readonly FindToDraw[] }[];
  /** In the order in which they are dealt. */
  readonly kinds: readonly CompareKind[];
  /** One of these two is asked, the other is null. */
  readonly places: AskedPlaces | null;
  readonly chance: AskedChance | null;
  readonly reading: string | null;
  readonly doubts: readonly string[];
  /** Shuffles on screen begin from it. */
  readonly seed: string;
}
