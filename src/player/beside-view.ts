import type { Drawn } from './drawn.ts';

/** What an estimate asks about. */
export interface SubjectView {
  readonly find: {
    readonly drawn: Drawn;
    readonly blind: string;
    readonly name: string;
    readonly particulars: string;
    readonly smallFind: number;
  } | null;
  readonly given: readonly { readonly name: string; readonly value: string }[];
}

/** A stretch of the strip of work, in shares of its width as SVG writes them. */
export interface StripPart {
  readonly x: string;
  readonly width: string;
  readonly pattern: string;
}

/** The making of one axe as a strip of time. */
export interface StripView {
  readonly title: string;
  readonly lead: string;
  readonly parts: readonly StripPart[];
  readonly marks: readonly {
    readonly x: string;
    readonly text: string;
    readonly anchor: 'start' | 'middle' | 'end';
  }[];
  /** The stretch too thin to see, drawn again larger; null where there is none. */
  readonly fine: { readonly end: string; readonly parts: readonly StripPart[] } | null;
  readonly scale: string;
  readonly lines: readonly { readonly pattern: string; readonly text: string }[];
  readonly times: string | null;
}

/** What each pit holds, kind by kind. */
export interface TallyView {
  readonly title: string;
  readonly how: string | null;
  readonly kind: string;
  readonly none: string;
  readonly pits: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    readonly drawn: Drawn;
    readonly cells: readonly {
      readonly count: number;
      /** Null where many pits stand side by side, and figures are read sooner. */
      readonly strokes: { readonly width: number; readonly height: number; readonly path: string } | null;
    }[];
  }[];
}
