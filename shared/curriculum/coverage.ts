import type { ClaimGrade, Curricula, Outcome } from './curricula.ts';
import type { JudgedClaim } from './judge-claim.ts';

export interface LessonClaims {
  readonly lesson: string;
  readonly claims: readonly JudgedClaim[];
}

export interface CoveredOutcome {
  readonly outcome: Outcome;
  readonly lessons: readonly { readonly lesson: string; readonly grade: ClaimGrade }[];
}

/** What a folder of lessons meets of one framework, and what it leaves. */
export interface Coverage {
  readonly framework: string;
  readonly name: string;
  readonly covered: readonly CoveredOutcome[];
  /** Outcomes that lessons of this product could meet and these do not. */
  readonly gaps: readonly Outcome[];
}

/** Which outcomes are met by which lessons; only earned claims count. */
export const coverageOf = (curricula: Curricula, lessons: readonly LessonClaims[]): readonly Coverage[] =>
  curricula.frameworks.map(({ id, name, outcomes }) => {
    const open = outcomes.filter(({ never }) => never === null);
    const rows = open.map((outcome): CoveredOutcome => ({
      outcome,
      lessons: lessons.flatMap(({ lesson, claims }) =>
        claims
          .filter((claim) => claim.fault === null && claim.outcome === outcome.id)
          .map(({ grade }) => ({ lesson, grade })),
      ),
    }));
    return {
      framework: id,
      name,
      covered: rows.filter((row) => row.lessons.length > 0),
      gaps: rows.filter((row) => row.lessons.length === 0).map(({ outcome }) => outcome),
    };
  });
