import type { Curricula } from './curricula.ts';
import type { LessonFacts } from './facts.ts';
import { judgeClaim, type JudgedClaim } from './judge-claim.ts';

/**
 * The claims a lesson could make and does not: each outcome it practises or teaches by what it asks, the practised
 * ones first, then in the order of the frameworks.
 *
 * @param claimed The ids already claimed.
 */
export function offerClaims(
  curricula: Curricula,
  lesson: LessonFacts,
  claimed: readonly string[],
): readonly JudgedClaim[] {
  const offered = curricula.frameworks.flatMap(({ outcomes }) =>
    outcomes.flatMap(({ id, never, evidence }): readonly JudgedClaim[] => {
      if (never !== null || evidence.length === 0 || claimed.includes(id)) return [];
      const judged = judgeClaim(curricula, lesson, { outcome: id, grade: 'touched' });
      const { best } = judged;
      return judged.fault !== null || best === null || best === 'touched' ? [] : [{ ...judged, grade: best }];
    }),
  );
  return [
    ...offered.filter(({ grade }) => grade === 'practised'),
    ...offered.filter(({ grade }) => grade === 'taught'),
  ];
}
