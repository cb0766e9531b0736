import type { Band } from '../library/bands.ts';

/** How far a lesson goes towards an outcome, the furthest first. */
export const CLAIM_GRADES = ['practised', 'taught', 'touched'] as const;
export type ClaimGrade = (typeof CLAIM_GRADES)[number];

/** How an outcome, a stage or a rule is known; the marks of the library. */
export type KnownBy = 'RF' | 'FM' | 'DER' | 'ASM' | 'CP' | 'invented';

/** A stage of a framework. Ages from (inclusive) to (exclusive). */
export interface Stage {
  readonly id: string;
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

/** One way an outcome can be shown: an activity of a kind that meets a condition, and the grade that gives. */
export interface EvidenceRule {
  readonly kind: string;
  readonly when: string;
  readonly grade: ClaimGrade;
}

/** What a framework asks of pupils, in our own words. */
export interface Outcome {
  readonly id: string;
  /** The publisher's code; null where it has none. */
  readonly code: string | null;
  readonly stage: string;
  readonly subject: string;
  /** Our own summary, never the official sentence. */
  readonly summary: string;
  readonly status: KnownBy;
  readonly source: { readonly ref: string; readonly at: string };
  /** Why no lesson here may claim it; null where one may. */
  readonly never: string | null;
  readonly evidence: readonly EvidenceRule[];
}

export interface FrameworkSource {
  readonly id: string;
  readonly citation: string;
  /** How it was seen: "RF, full PDF". */
  readonly seen: string;
  readonly url: string | null;
}

/** A published framework, as far as lessons about making and pits can meet it. */
export interface Framework {
  readonly id: string;
  readonly name: string;
  readonly country: string;
  readonly publisher: string;
  readonly version: string;
  readonly licence: string;
  readonly note: string;
  readonly agesKnown: string;
  readonly stages: readonly Stage[];
  readonly sources: readonly FrameworkSource[];
  readonly outcomes: readonly Outcome[];
}

/** Something that must be true of an activity before it is evidence. */
export interface Condition {
  readonly id: string;
  readonly means: string;
  /** `plan`: the compiler works it out. `lead`: it happens in the room, and the lead vouches for it. */
  readonly seenBy: 'plan' | 'lead';
  /** Ideas of number it asks of the pupil. */
  readonly needs: readonly string[];
  /** An invented site never meets it. */
  readonly realPlace: boolean;
  /** Years BCE (negative for CE) within which the site must lie; null where any will do. */
  readonly withinBce: { readonly from: number; readonly to: number } | null;
  /** The most things that may be counted, by stage; null where any number will do. */
  readonly countMost: Readonly<Record<string, number>> | null;
}

/** A step of age: which stages it holds and which ideas of number its pupils may be asked for. */
export interface AgeStep {
  readonly id: string;
  readonly band: Band;
  readonly wholeNumbersTo: number;
  readonly mayUse: readonly string[];
  readonly note: string;
  readonly status: KnownBy;
  readonly stages: Readonly<Record<string, readonly string[]>>;
  readonly but: readonly {
    readonly framework: string;
    readonly stage: string;
    readonly add: readonly string[];
    readonly without: readonly string[];
    readonly note: string;
  }[];
}

/** All that claims are judged by. */
export interface Curricula {
  readonly frameworks: readonly Framework[];
  readonly conditions: readonly Condition[];
  readonly steps: readonly AgeStep[];
}

/** Codes lose their hyphens in copies: they are compared on a form without marks. @example foldCode('SOC 2-04a') // 'soc204a' */
export const foldCode = (id: string): string => id.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '');

/** An outcome by its id or its code, with its framework; null where there is none. */
export function lookUpOutcome(
  curricula: Curricula,
  id: string,
): { readonly framework: Framework; readonly outcome: Outcome } | null {
  // An id as it is written wins over one that only folds to the same; it is by far the commoner.
  for (const framework of curricula.frameworks) {
    const outcome = framework.outcomes.find((known) => known.id === id);
    if (outcome !== undefined) return { framework, outcome };
  }
  const wanted = foldCode(id);
  for (const framework of curricula.frameworks) {
    const outcome = framework.outcomes.find((known) => foldCode(known.id) === wanted);
    if (outcome !== undefined) return { framework, outcome };
  }
  return null;
}
