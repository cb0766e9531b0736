import type { Template } from '../../shared/words/index.ts';
import type { BarterProps } from '../islands/barter-view.ts';
import type { ClassProps } from '../islands/barter-class-view.ts';
import type { CompareProps } from '../islands/compare-view.ts';
import type { EstimateProps } from '../islands/estimate-view.ts';
import type { HandleProps } from '../islands/handle-view.ts';
import type { OrderProps } from '../islands/order-view.ts';
import type { SortProps } from '../islands/sort-view.ts';
import type { TalkProps } from '../islands/talk-view.ts';
import type { TalkAfter } from '../../shared/telling/barter-talk.ts';
import type { StripView, SubjectView, TallyView } from './beside-view.ts';
import type { Drawn } from './drawn.ts';
import type { PapersView } from './papers/paper-view.ts';

/** A drawing as it is put in the page. */
export interface Picture {
  readonly viewBox: string;
  readonly markup: string;
}

/** What stands beside an order: the find whose making it is. */
export interface OrderOf {
  readonly drawn: Drawn;
  readonly text: string;
  readonly number: number;
}

/** The figures an estimate stands on, with the works they come from. */
export interface HowView {
  readonly title: string;
  readonly lead: string;
  readonly heads: readonly string[];
  readonly rows: readonly {
    readonly label: string;
    readonly value: string;
    readonly status: string;
    readonly works: string;
  }[];
  readonly trials: readonly string[];
  readonly works: readonly string[];
}

/** Every screen there is: an activity's island with what stands around it. */
export interface Screens {
  readonly sort: { readonly props: SortProps };
  readonly order: { readonly props: OrderProps; readonly of: OrderOf | null };
  readonly estimate: {
    readonly props: EstimateProps;
    readonly subject: SubjectView;
    readonly how: HowView;
    readonly strip: StripView | null;
  };
  readonly handle: { readonly props: HandleProps };
  readonly talk: { readonly props: TalkProps };
  readonly gathering: { readonly props: BarterProps; readonly talk: TalkAfter };
  readonly class: { readonly props: ClassProps; readonly talk: TalkAfter };
  readonly places: {
    readonly props: CompareProps;
    readonly plans: readonly { readonly picture: Picture; readonly caption: string }[];
    readonly tally: TallyView;
  };
  readonly chance: { readonly props: CompareProps; readonly tally: TallyView };
}

/** A screen with its name. */
export type ScreenView = {
  [Name in keyof Screens]: { readonly screen: Name } & Screens[Name];
}[keyof Screens];

/** What every screen is told beside its own. */
export interface Around {
  readonly id: string;
  /** Null where the title asks it already. */
  readonly question: string | null;
}

/** An activity of a lesson as the page shows it. */
export interface ActivityView extends Around {
  readonly number: number;
  readonly title: string;
  readonly minutes: string;
  readonly view: ScreenView;
}

/** A lesson told to a pack's page that stands on the Bench, with the running feet of its papers as style. */
export interface LessonTold {
  readonly lesson: LessonView;
  readonly feet: string;
}

/** A whole lesson as plain data: all that the player is handed. */
export interface LessonView {
  readonly product: string;
  readonly skip: string;
  readonly foot: string;
  readonly rod: {
    readonly label: string;
    readonly parts: readonly {
      readonly id: string;
      readonly name: string;
      readonly href: string;
      readonly isActivity: boolean;
    }[];
  };
  readonly title: string;
  readonly site: string;
  /** Says that the site is invented; null where it is not. */
  readonly invented: string | null;
  readonly particulars: readonly { readonly name: string; readonly value: string }[];
  readonly drawings: readonly (Picture & { readonly id: string })[];
  readonly parts: readonly (
    | { readonly part: 'prose'; readonly id: string; readonly html: string }
    | { readonly part: 'activity'; readonly activity: ActivityView }
  )[];
  readonly caution: { readonly title: string; readonly text: string } | null;
  /** What could hurt someone, and what is usually done, strongest control first. */
  readonly safety: {
    readonly title: string;
    readonly first: string;
    readonly hazards: readonly {
      readonly name: string;
      readonly controls: readonly string[];
      readonly decides: string;
    }[];
  };
  readonly papers: PapersView;
  /** The answers as a file to bring back. */
  readonly results: {
    readonly title: string;
    readonly lead: string;
    readonly save: string;
    readonly none: string;
    readonly saved: Template;
    readonly file: string;
  };
}
