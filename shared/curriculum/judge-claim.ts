import type { Band } from '../library/bands.ts';
import {
  CLAIM_GRADES,
  lookUpOutcome,
  type ClaimGrade,
  type Condition,
  type Curricula,
  type Framework,
  type Outcome,
} from './curricula.ts';
import type { ActivityFacts, LessonFacts } from './facts.ts';
import { bandsOf, mayUse, stepsFor } from './steps.ts';

export interface Claim {
  readonly outcome: string;
  readonly grade: ClaimGrade;
}

/** An activity that shows an outcome: where, by which condition, to which grade, and who saw to it. */
export interface Evidence {
  readonly activity: string;
  readonly kind: string;
  readonly title: string;
  readonly when: string;
  readonly means: string;
  readonly grade: ClaimGrade;
  /** Seen in the compiled activity, or vouched for by the lead. */
  readonly by: 'plan' | 'lead';
  /** The bands that show it, where not all that meet the stage do. */
  readonly bands?: readonly Band[];
}

/** Why a claim is not earned. */
export type ClaimFault =
  | { readonly fault: 'unknown' }
  | { readonly fault: 'another-people'; readonly because: string }
  | { readonly fault: 'another-place' }
  | { readonly fault: 'wrong-stage'; readonly bands: readonly string[]; readonly stage: string }
  | {
      readonly fault: 'no-evidence';
      readonly wanted: readonly { readonly kind: string; readonly means: string }[];
    }
  | { readonly fault: 'beyond-band'; readonly needs: readonly string[]; readonly stage: string }
  | { readonly fault: 'grade-too-high'; readonly best: ClaimGrade };

/** A claim, and whether the lesson earns it. */
export interface JudgedClaim extends Claim {
  readonly framework: Framework | null;
  readonly known: Outcome | null;
  /** The furthest grade the lesson earns; null where it earns none. */
  readonly best: ClaimGrade | null;
  readonly evidence: readonly Evidence[];
  readonly fault: ClaimFault | null;
}

const rank = (grade: ClaimGrade): number => CLAIM_GRADES.indexOf(grade);

/** True where one grade reaches at least as far as another. @example reaches('practised', 'taught') // true */
export const reaches = (grade: ClaimGrade, wanted: ClaimGrade): boolean => rank(grade) <= rank(wanted);

/** Whether an activity meets a condition: as the compiler saw, or as the lead vouches where only the lead can see. */
function metBy(
  activity: ActivityFacts,
  condition: Condition,
  lesson: LessonFacts,
  stage: string,
  band: Band,
): 'plan' | 'lead' | null {
  if (condition.realPlace && lesson.isInvented) return null;
  const years = condition.withinBce;
  if (years !== null && (lesson.fromBce > years.from || lesson.toBce < years.to)) return null;
  const most = condition.countMost?.[stage] ?? condition.countMost?.['otherwise'];
  if (most !== undefined && (activity.things === null || activity.things > most)) return null;
  if (activity.met.includes(condition.id)) return 'plan';
  const own = (activity.metIn ?? []).filter(({ bands }) => bands.includes(band));
  if (own.some(({ met }) => met.includes(condition.id))) return 'plan';
  return condition.seenBy === 'lead' && activity.vouched.includes(condition.id) ? 'lead' : null;
}

/** All the evidence a lesson has for an outcome, the furthest grade first; and the number ideas that stood in the way. */
function gatherEvidence(
  curricula: Curricula,
  lesson: LessonFacts,
  framework: Framework,
  outcome: Outcome,
): { readonly evidence: readonly Evidence[]; readonly beyond: readonly string[] } {
  const steps = stepsFor(curricula, lesson.bands, framework.id, outcome.stage).map((step) => ({
    band: step.band,
    allowed: mayUse(step, framework.id, outcome.stage),
  }));
  const all = new Set(steps.map(({ band }) => band));
  const beyond = new Set<string>();
  const evidence = outcome.evidence.flatMap(({ kind, when, grade }) => {
    const condition = curricula.conditions.find(({ id }) => id === when);
    if (condition === undefined) return [];
    return lesson.activities.flatMap((activity): readonly Evidence[] => {
      // Each band that meets the stage is looked at by itself: what only the older are asked, only they show.
      const met = steps.flatMap(({ band, allowed }) => {
        const by = metBy(activity, condition, lesson, outcome.stage, band);
        if (by === null) return [];
        const missing = condition.needs.filter((need) => !allowed.has(need));
        for (const need of missing) beyond.add(need);
        return missing.length > 0 ? [] : [{ band, by }];
      });
      const [first] = met;
      if (first === undefined) return [];
      const { by } = first;
      const own = [...new Set(met.map(({ band }) => band))];
      // What another kind meets in passing only touches the outcome.
      const ofKind: ClaimGrade = activity.kind === kind ? grade : 'touched';
      const { id, title, most } = activity;
      const reached = by === 'plan' && most !== undefined && reaches(ofKind, most) ? most : ofKind;
      const shown = own.length < all.size ? { bands: own } : {};
      const { means } = condition;
      return [{ activity: id, kind: activity.kind, title, when, means, grade: reached, by, ...shown }];
    });
  });
  return { evidence: evidence.toSorted((a, b) => rank(a.grade) - rank(b.grade)), beyond: [...beyond] };
}

/**
 * Judges one claim against what the compiled lesson asks. A claim is earned where the outcome is known and open, its
 * stage is met in the lesson's bands, in one of them an activity of the right kind meets its condition with no idea of number beyond
 * the stage, and the grade is no higher than that evidence gives.
 */
export function judgeClaim(curricula: Curricula, lesson: LessonFacts, claim: Claim): JudgedClaim {
  const found = lookUpOutcome(curricula, claim.outcome);
  if (found === null) {
    return { ...claim, framework: null, known: null, best: null, evidence: [], fault: { fault: 'unknown' } };
  }
  const { framework, outcome } = found;
  const base = { ...claim, outcome: outcome.id, framework, known: outcome };
  const refuse = (fault: ClaimFault): JudgedClaim => ({ ...base, best: null, evidence: [], fault });
  if (outcome.never !== null) return refuse({ fault: 'another-people', because: outcome.never });
  const stage = framework.stages.find(({ id }) => id === outcome.stage)?.label ?? outcome.stage;
  if (stepsFor(curricula, lesson.bands, framework.id, outcome.stage).length === 0) {
    return refuse({ fault: 'wrong-stage', bands: bandsOf(curricula, framework.id, outcome.stage), stage });
  }
  const conditions = outcome.evidence.flatMap(({ kind, when }) => {
    const condition = curricula.conditions.find(({ id }) => id === when);
    return condition === undefined ? [] : [{ kind, condition }];
  });
  if (
    lesson.isInvented &&
    conditions.length > 0 &&
    conditions.every(({ condition }) => condition.realPlace)
  ) {
    return refuse({ fault: 'another-place' });
  }
  const { evidence, beyond } = gatherEvidence(curricula, lesson, framework, outcome);
  const best = evidence[0]?.grade ?? null;
  if (best === null) {
    if (beyond.length > 0) return refuse({ fault: 'beyond-band', needs: beyond, stage });
    const wanted = conditions.map(({ kind, condition }) => ({ kind, means: condition.means }));
    return refuse({ fault: 'no-evidence', wanted });
  }
  if (!reaches(best, claim.grade))
    return { ...base, best, evidence, fault: { fault: 'grade-too-high', best } };
  return { ...base, best, evidence, fault: null };
}
