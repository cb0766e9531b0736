import type { EdgeClass, Exposure, Flag, Setting, StationKind } from './vocabulary.ts';

/** How a row is known, and where it comes from. The library holds the marks and the sources. */
export interface Known {
  readonly status: string;
  readonly source: string;
  readonly note?: string;
}

/** A number of the safety data; null where a search found none. */
export interface SafetyNumber extends Known {
  readonly name: string;
  readonly value: number | string | readonly number[] | null;
  readonly unit: string | null;
  readonly with?: string;
  readonly working?: string;
}

export interface SafetyText extends Known {
  readonly text: string;
}

/** One age span of one framework; ages in whole years of the youngest child, both ends inclusive. */
export interface RatioRule extends Known {
  readonly id: string;
  readonly framework: string;
  readonly ageFrom: number;
  readonly ageTo: number;
  /** Null where the leader types the figure. */
  readonly childrenPerAdult: number | null;
  readonly published: string;
  readonly standing: string;
}

/** What a station needs. Distances in metres; null where there is no rope. */
export interface StationRule extends Known {
  readonly id: StationKind;
  readonly name: string;
  /** People whose hands belong to the work; never counted as supervisors. */
  readonly practitioners: number;
  readonly minimumSupervisors: number;
  /** Steps by the age of the youngest child, youngest step first. */
  readonly childrenPerSupervisor: readonly { readonly from: number; readonly children: number }[];
  readonly maximumAtOnce: number;
  readonly settings: readonly Setting[];
  readonly ropeM: number | null;
  /** Nearer than this, eyes are covered; 0 where there is no such zone. */
  readonly eyeZoneM: number;
  readonly kit: readonly string[];
}

/** refuse: not built. hold: built, but the visit is not ready. refer: someone else knows. */
export const REFUSAL_OUTCOMES = ['refuse', 'hold', 'refer'] as const;
export type RefusalOutcome = (typeof REFUSAL_OUTCOMES)[number];

export interface RefusalRule extends Known {
  readonly id: string;
  readonly outcome: RefusalOutcome;
  readonly when: string;
  /** With `{places}` filled by what was found. */
  readonly say: string;
  readonly mend: string;
}

/** Strongest first: the order controls are always printed in. */
export const CONTROL_LEVELS = ['eliminate', 'substitute', 'engineering', 'administrative', 'ppe'] as const;
export type ControlLevel = (typeof CONTROL_LEVELS)[number];

export interface Control extends Known {
  readonly id: string;
  readonly level: ControlLevel;
  readonly text: string;
}

/** When a hazard is listed: always, or on any overlap. */
export interface Arises {
  readonly always: boolean;
  readonly kinds: readonly string[];
  readonly stations: readonly StationKind[];
  readonly settings: readonly Setting[];
  readonly flags: readonly Flag[];
  readonly edges: readonly EdgeClass[];
}

export interface Hazard {
  readonly id: string;
  readonly name: string;
  readonly arises: Arises;
  readonly who: readonly string[];
  /** The worst credible harm in words; likelihood and severity are never scored. */
  readonly worst: string;
  readonly controls: readonly Control[];
  readonly never: readonly string[];
  readonly numbers: readonly SafetyNumber[];
  /** Numbers of registered signs. */
  readonly signs: readonly string[];
  readonly places: { readonly uk: string; readonly us: string; readonly eu: string };
  readonly deferTo: string;
}

export interface KitList extends Known {
  readonly id: string;
  readonly for: string;
  readonly items: readonly string[];
}

export interface Sign extends Known {
  readonly id: string;
  readonly title: string;
  readonly useFor: string;
}

/** Youngest age, in whole years, for each exposure to an edge class; null: never for pupils. */
export type MinimumAges = Readonly<Record<EdgeClass, Readonly<Record<Exposure, number | null>>>>;

/** All the product knows of safety: plain data, read once and handed in. */
export interface SafetyRules {
  readonly caution: {
    readonly short: string;
    readonly full: string;
    readonly forPupils: string;
    readonly neverLine: string;
    readonly status: string;
  };
  readonly edges: readonly (Known & {
    readonly id: EdgeClass;
    readonly name: string;
    readonly meaning: string;
  })[];
  readonly edgeCheck: SafetyText;
  readonly exposures: readonly (Known & { readonly id: Exposure; readonly meaning: string })[];
  readonly minimumAges: MinimumAges;
  /** Type of object to its class before the piece-by-piece check; a type not named is the sharpest. */
  readonly edgeOfType: Readonly<Record<string, EdgeClass>>;
  readonly ratios: readonly RatioRule[];
  readonly ratioNotes: readonly SafetyText[];
  readonly stations: readonly StationRule[];
  readonly clauses: readonly (SafetyText & { readonly id: string })[];
  readonly firstAidNumbers: readonly SafetyNumber[];
  readonly refusals: readonly RefusalRule[];
  readonly protectiveEquipment: readonly (Known & {
    readonly id: string;
    readonly item: string;
    readonly marks: readonly string[];
  })[];
  readonly protectiveNumbers: readonly SafetyNumber[];
  readonly signs: readonly Sign[];
  readonly bottleLabels: readonly Sign[];
  readonly kit: readonly KitList[];
  readonly hazards: readonly Hazard[];
  readonly history: readonly SafetyText[];
  readonly assessment: {
    readonly steps: readonly (SafetyText & { readonly filledBy: string })[];
    readonly columns: readonly (Known & {
      readonly id: string;
      readonly heading: string;
      readonly fill: 'product' | 'blank';
    })[];
    readonly notes: readonly SafetyText[];
  };
  readonly sources: readonly {
    readonly id: string;
    readonly citation: string;
    readonly status: string;
    readonly via?: string;
  }[];
}
