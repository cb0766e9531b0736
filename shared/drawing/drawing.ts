/** What a drawing needs to know of a find; a `Find` of the library with its attributes laid flat. Lengths in mm. */
export interface FindToDraw {
  readonly id: string;
  readonly objectType: string;
  readonly material: string;
  readonly state: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly count: number;
  readonly side?: 'left' | 'right';
  readonly decoration?: string;
  /** The lead's own photograph of it, shown where the find is looked at closely. */
  readonly photo?: Photo;
}

/** A photograph of a find, carried with it. */
export interface Photo {
  /** The picture itself, as a `data:` address; nothing is fetched. */
  readonly address: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** How many picture points the find's length takes; without it there is no scale bar. */
  readonly lengthPx?: number;
  /** What is to be seen in it. */
  readonly shows: string;
  /** Who took it or owns it: stands under it wherever it is shown. */
  readonly credit: string;
}

/** A drawing as SVG markup in millimetres, without its outer element. */
export interface Drawing {
  /** Markup inside the `<svg>` or `<symbol>`: unscaled millimetres, no ids, classes and `data-part` only. */
  readonly markup: string;
  /** The drawn box, in mm, scale bar and extra views included: goes into `viewBox`. */
  readonly viewBox: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

export interface PitToDraw {
  readonly id: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly depthMm: number;
  readonly profile: 'bowl' | 'steep-sided';
}

/** A fill of a pit, top first; its description is read for silt, sand, gravel, charcoal, wet. */
export interface FillToDraw {
  readonly context: number;
  readonly description: string;
  readonly thicknessMm: number;
}

/** What a section shows beyond the plan. */
export interface PitToCut extends PitToDraw {
  readonly cut: number;
  readonly topLevelMOd: number;
  readonly fills: readonly FillToDraw[];
}

/** Where a find lies in the plan, in mm from the plan's top left corner. */
export interface PlanPlace {
  readonly id: string;
  /** Where the middle of the find's view box (view `lying`) comes to lie. */
  readonly xMm: number;
  readonly yMm: number;
  readonly turnDegrees: number;
  /** How much larger than the plan's scale the find is drawn, so that it can be seen and pressed. */
  readonly enlarged: number;
  /** The middle of the triangle its number stands in, clear of every find and of every other number. */
  readonly tag: { readonly xMm: number; readonly yMm: number };
}

export interface PitPlan {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Edge, hachures, base, stones, north arrow and scale; no finds. */
  readonly markup: string;
  readonly places: readonly PlanPlace[];
  /** The side of a number's triangle, mm. */
  readonly tagSideMm: number;
}
