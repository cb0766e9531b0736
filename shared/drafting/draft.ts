import type { KindName } from '../activities/index.ts';
import type { Stream } from '../chance/index.ts';
import type { JudgedClaim } from '../curriculum/index.ts';
import type { Band, BandLimits, Find, Library, Site } from '../library/index.ts';

/** What a lead asks of a draft. */
export interface DraftRequest {
  readonly bands: readonly Band[];
  readonly minutes: number;
  /** The kinds of activity to draw on; all where left out. */
  readonly kinds?: readonly KindName[];
  /** Subjects whose outcomes count; all where left out. */
  readonly subjects?: readonly string[];
  /** Finds that must be in it. */
  readonly pins?: readonly string[];
  /** Finds whose record is still in question; used only where nothing else will do. */
  readonly doubtful?: readonly string[];
  /** Another seed, another draft. */
  readonly seed: string;
  readonly title?: string;
}

/** One part of what is sought: from 0 to 1, its weight, and the figures in words. */
export interface MeritPart {
  readonly name: string;
  readonly value: number;
  readonly weight: number;
  readonly told: string;
}

/** An activity that could be in the lesson. */
export interface Candidate {
  readonly kind: KindName;
  readonly title: string;
  readonly minutes: number;
  /** Where in a lesson it stands best: what is looked at first, then what is worked out from it. */
  readonly place: number;
  /** The block's lines of YAML after its title, without minutes. */
  readonly lines: readonly string[];
  /** Other lines, where those are more than the band can be asked. */
  readonly plainer?: readonly string[];
  /** The weighted sum of its parts. */
  readonly merit: number;
  readonly parts: readonly MeritPart[];
  /** The finds it is made of; [] where it needs none. */
  readonly finds: readonly string[];
  /** What it is, in one sentence with its figures. */
  readonly summary: string;
}

/** What drafting one kind came to. */
export interface Drafted {
  readonly candidates: readonly Omit<Candidate, 'kind'>[];
  /** Why there are none, or fewer than there could be. */
  readonly lacking: readonly string[];
}

/** All a kind's drafter works from. */
export interface DraftContext {
  readonly library: Library;
  readonly site: Site;
  readonly finds: readonly Find[];
  readonly bands: readonly Band[];
  /** Limits of the youngest band. */
  readonly limits: BandLimits;
  /** The longest one activity may be. */
  readonly minutesMost: number;
  readonly pins: ReadonlySet<string>;
  readonly doubtful: ReadonlySet<string>;
  readonly chance: Stream;
}

/** Drafts one kind; yields where a page may draw breath. */
export type Drafter = (context: DraftContext) => Generator<void, Drafted, void>;

/** A draft: the lesson as a file, why it is as it is, and what stood in the way. */
export interface Draft {
  /** Null where no lesson can be made of these finds in this time. */
  readonly text: string | null;
  readonly activities: readonly Candidate[];
  readonly reasons: readonly string[];
  readonly lacking: readonly string[];
  /** Claims the lesson earns; those in its head come first. */
  readonly claims: readonly JudgedClaim[];
  /** What was sought, from 0 to 1, and its parts. */
  readonly merit: number;
  readonly parts: readonly MeritPart[];
}

/** How far a drafting has come, told between two stretches of work. */
export interface DraftProgress {
  readonly done: number;
  readonly of: number;
}

export const meritOf = (parts: readonly Pick<MeritPart, 'value' | 'weight'>[]): number => {
  const weights = parts.reduce((sum, { weight }) => sum + weight, 0);
  return weights === 0 ? 0 : parts.reduce((sum, { value, weight }) => sum + value * weight, 0) / weights;
};
