import type { Attribute } from '../../library/library.ts';
import type { FindToDraw, PitToCut } from '../../drawing/drawing.ts';
import type { ActivityBase } from '../kind.ts';

/** A tray a find may be placed in. */
export interface SortTray {
  readonly id: string;
  readonly name: string;
  readonly hint: string;
}

/** A home the record, or a good argument, gives a find. */
export interface Home {
  readonly tray: string;
  readonly because: string;
  /** The record's own home, or a second one that can be argued. */
  readonly by: 'record' | 'argument';
}

/** A find as a sort shows it: first without the answer, at the end with it. */
export interface SortFind {
  readonly id: string;
  readonly smallFind: number;
  readonly pit: string;
  /** Before: what can be seen. */
  readonly plain: string;
  /** After: what it is. */
  readonly name: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly massG: number | null;
  readonly count: number;
  readonly homes: readonly Home[];
  readonly note: string | null;
  /** The find's value of every attribute, for trays of one's own. */
  readonly attributes: Readonly<Record<Attribute, string>>;
  readonly drawing: FindToDraw;
}

export interface SortActivity extends ActivityBase {
  readonly kind: 'sort';
  readonly question: string;
  readonly by: Attribute;
  /** Pupils make and name their own trays. */
  readonly ownTrays: boolean;
  /** Trays are steps on a line. */
  readonly ordered: boolean;
  readonly trays: readonly SortTray[];
  readonly finds: readonly SortFind[];
  /** The pit they are lifted from; null where they come from several. */
  readonly pit: PitToCut | null;
  /** Seeds the shuffles that say what guessing would get with trays of one's own. */
  readonly seed: string;
  /** How the signs are known. */
  readonly signsSource: string;
}
