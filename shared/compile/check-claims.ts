import { asksOf, isScored, type Activity } from '../activities/index.ts';
import {
  judgeClaim,
  lookUpOutcome,
  type ActivityFacts,
  type Claim,
  type Curricula,
  type JudgedClaim,
  type LessonFacts,
} from '../curriculum/index.ts';
import { nearest, type Fault, type LessonHead } from '../lesson/index.ts';
import type { Library, Site } from '../library/library.ts';
import { claimWords } from '../words/en/claim-problems.ts';
import { shapeWords } from '../words/en/problems.ts';

/** What an activity asks, with what its block vouches for. */
export const factsOf = (activity: Activity, vouched: readonly string[], library: Library): ActivityFacts => ({
  id: activity.id,
  kind: activity.kind,
  title: activity.title,
  vouched,
  // Without a right answer no play shows that an outcome was practised: only someone in the room can say so.
  ...(isScored(activity) ? {} : { most: 'taught' as const }),
  ...asksOf(activity, library),
});

/** What a lesson asks as a whole. */
export const lessonFacts = (
  { bands }: LessonHead,
  site: Site,
  activities: readonly ActivityFacts[],
): LessonFacts => ({
  bands,
  isInvented: site.status === 'invented',
  fromBce: site.period.fromBce,
  toBce: site.period.toBce,
  activities,
});

/** Words a block vouches for that are not conditions, or that the compiler sees for itself. */
export const vouchFaults = (vouched: readonly string[], { conditions }: Curricula): readonly Fault[] =>
  vouched.flatMap((word, index): readonly Fault[] => {
    const path = ['vouched', index];
    const open = conditions.filter(({ seenBy }) => seenBy === 'lead').map(({ id }) => id);
    if (open.includes(word)) return [];
    if (conditions.some(({ id }) => id === word)) {
      return [{ code: 'vouch-needless', grade: 'error', path, ...claimWords.vouchNeedless(word) }];
    }
    const near = nearest(word, open);
    const told = shapeWords.unknownWord(word, near, open, 'in content/claim-rules.yaml');
    return [
      {
        code: 'word-unknown',
        grade: 'error',
        path,
        ...told,
        ...(near === null ? {} : { replacement: near }),
      },
    ];
  });

function claimFault(
  { fault, outcome, grade }: JudgedClaim,
  index: number,
  curricula: Curricula,
): Fault | null {
  if (fault === null) return null;
  const atOutcome = { grade: 'error', path: ['claims', index, 'outcome'] } as const;
  switch (fault.fault) {
    case 'unknown': {
      const ids = curricula.frameworks.flatMap(({ outcomes }) => outcomes.map(({ id }) => id));
      const near = nearest(outcome, ids);
      const replacement = near === null ? {} : { replacement: near };
      return {
        code: 'claim-unknown',
        ...atOutcome,
        ...claimWords.unknown(outcome, near, ids.length),
        ...replacement,
      };
    }
    case 'another-people':
      return {
        code: 'claim-of-another-people',
        ...atOutcome,
        ...claimWords.anotherPeople(outcome, fault.because),
      };
    case 'another-place':
      return { code: 'claim-of-another-place', ...atOutcome, ...claimWords.anotherPlace(outcome) };
    case 'wrong-stage':
      return {
        code: 'claim-wrong-stage',
        ...atOutcome,
        ...claimWords.wrongStage(outcome, fault.stage, fault.bands),
      };
    case 'no-evidence':
      return {
        code: 'claim-without-evidence',
        ...atOutcome,
        ...claimWords.noEvidence(outcome, fault.wanted),
      };
    case 'beyond-band':
      return {
        code: 'claim-beyond-band',
        ...atOutcome,
        ...claimWords.beyondBand(outcome, fault.needs, fault.stage),
      };
    case 'grade-too-high':
      return {
        code: 'claim-too-high',
        grade: 'error',
        path: ['claims', index, 'grade'],
        ...claimWords.gradeTooHigh(outcome, grade, fault.best),
        replacement: fault.best,
      };
    default:
      return fault satisfies never;
  }
}

/** Faults that a block which did not compile might explain: they wait until it does. */
const MAY_BE_CONSEQUENCES: readonly string[] = ['no-evidence', 'grade-too-high', 'beyond-band'];

/**
 * Judges the claims of a lesson.
 *
 * @param areBlocksWhole False where a block did not compile: then nothing is said of missing evidence.
 */
export function checkClaims(
  claims: readonly Claim[],
  facts: LessonFacts,
  curricula: Curricula,
  areBlocksWhole: boolean,
): { readonly judged: readonly JudgedClaim[]; readonly faults: readonly Fault[] } {
  const seen = new Set<string>();
  const faults: Fault[] = [];
  const judged = claims.map((claim, index) => {
    const verdict = judgeClaim(curricula, facts, claim);
    const id = lookUpOutcome(curricula, claim.outcome)?.outcome.id ?? claim.outcome;
    if (seen.has(id)) {
      const path = ['claims', index, 'outcome'];
      faults.push({ code: 'claim-repeated', grade: 'error', path, ...claimWords.repeated(id) });
    }
    seen.add(id);
    const fault = claimFault(verdict, index, curricula);
    const waits = !areBlocksWhole && MAY_BE_CONSEQUENCES.includes(verdict.fault?.fault ?? '');
    if (fault !== null && !waits) faults.push(fault);
    return verdict;
  });
  return { judged, faults };
}
