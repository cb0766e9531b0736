import type { JudgedClaim } from '../curriculum/index.ts';
import { youngestAge } from '../library/bands.ts';
import type { Library } from '../library/library.ts';
import { plainSituation, type Because, type Refusal } from '../safety/index.ts';
import { lessonReport, lessonSetting } from './lesson-report.ts';
import type { Plan } from './plan.ts';

/** What a visit comes to for a group: who must be there, what must be brought. */
export interface AddedUp {
  readonly adults: number;
  readonly firstAiders: number;
  readonly because: readonly Because[];
  readonly refusals: readonly Refusal[];
  readonly kit: readonly { readonly name: string; readonly items: readonly string[] }[];
  readonly hazards: readonly string[];
}

/** A claim in one line, and whether the lesson earns it. */
export interface ClaimLine {
  readonly code: string;
  readonly isEarned: boolean;
  /** In our own words; '' where no framework knows the outcome. */
  readonly summary: string;
}

/** The claims of a lesson, one line each. */
export const claimLines = (claims: readonly JudgedClaim[]): readonly ClaimLine[] =>
  claims.map(({ outcome, known, fault }) => ({
    code: known?.code ?? outcome,
    isEarned: fault === null,
    summary: known?.summary ?? '',
  }));

/** Adds a visit up for a group of children, the youngest as old as the youngest band. */
export function addUp(
  { safety }: Library,
  plan: Plan,
  children: number,
  frameworks: readonly string[],
): AddedUp {
  const group = plainSituation(children, youngestAge(plan.bands), frameworks, lessonSetting(plan));
  const { adults, refusals, kit, hazards } = lessonReport(safety, plan, group);
  return {
    adults: adults.totalAdults,
    firstAiders: adults.firstAiders,
    because: adults.because,
    refusals,
    kit: kit.map((list) => ({ name: list.for, items: list.items })),
    hazards: hazards.map(({ name }) => name),
  };
}
