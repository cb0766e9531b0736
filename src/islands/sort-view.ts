import type { PlanPlace } from '../../shared/drawing/index.ts';
import type { Template } from '../../shared/words/index.ts';
import type { sort } from '../../shared/words/en/sort.ts';
import type { SortActivity } from '../../shared/activities/scorers.ts';

/** The words of a sort, resolved for a band. */
export type SortWords = Readonly<Record<keyof typeof sort, Template>>;

/** The parts of a sort's plan of the pit that move with play; the ground itself is drawn in the page. */
export interface PlanView {
  readonly widthMm: number;
  readonly heightMm: number;
  /** The side of a number's triangle. */
  readonly tagSideMm: number;
  /** The id of the drawn ground in the page. */
  readonly groundId: string;
  /** Each find's place, with the box its drawing takes at the plan's scale, enlarged. */
  readonly places: readonly (PlanPlace & { readonly boxWidthMm: number; readonly boxHeightMm: number })[];
}

export interface SortProps {
  readonly lesson: string;
  readonly activity: SortActivity;
  readonly words: SortWords;
  /** Null where the finds come from several pits: then they lie on a bench. */
  readonly plan: PlanView | null;
  /** What shows of each find, for those who hear the drawing; gives no answer away. */
  readonly seen: Readonly<Record<string, string>>;
  /** Older bands see how the score is worked out. */
  readonly showsWorking: boolean;
  /** The words for each attribute, for trays of one's own. */
  readonly attributes: Readonly<Record<string, string>>;
}
