import { BANDS, type Band } from '../library/bands.ts';
import type { ClaimGrade, Curricula, Framework, Outcome } from './curricula.ts';
import type { LessonClaims } from './coverage.ts';
import { bandsOf } from './steps.ts';

/** An outcome with what a reader asks of it: which stage, by whom said, met by which lessons. */
export interface ListedOutcome {
  readonly outcome: Outcome;
  readonly stage: string;
  /** Which of the framework's sources it comes from, counted from 1; 0 where the framework does not name it. */
  readonly sourceNumber: number;
  /** The kinds of activity that show it, each once. */
  readonly kinds: readonly string[];
  readonly lessons: readonly { readonly lesson: string; readonly grade: ClaimGrade }[];
}

/** The outcomes of a framework that are met at the same ages, by subject. */
export interface AgeGroup {
  /** In order of age; [] for a stage no band meets. */
  readonly bands: readonly Band[];
  readonly subjects: readonly { readonly subject: string; readonly outcomes: readonly ListedOutcome[] }[];
}

export interface ListedFramework {
  readonly framework: Framework;
  readonly groups: readonly AgeGroup[];
}

const groupBy = <Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly (readonly Item[])[] =>
  [...new Set(items.map(keyOf))].map((key) => items.filter((item) => keyOf(item) === key));

/** Younger first; of those that begin together, those that end sooner. Ages nobody meets come last. */
const byAge = (a: AgeGroup, b: AgeGroup): number => {
  const place = ({ bands: [first] }: AgeGroup): number =>
    first === undefined ? BANDS.length : BANDS.indexOf(first);
  return place(a) - place(b) || a.bands.length - b.bands.length;
};

/** Every outcome of every framework, once: by age, then by subject, with the lessons whose claim to it is earned. */
export function listOutcomes(
  curricula: Curricula,
  lessons: readonly LessonClaims[],
): readonly ListedFramework[] {
  return curricula.frameworks.map((framework) => {
    const listed = framework.outcomes.map((outcome): ListedOutcome => ({
      outcome,
      stage: framework.stages.find(({ id }) => id === outcome.stage)?.label ?? outcome.stage,
      sourceNumber: framework.sources.findIndex(({ id }) => id === outcome.source.ref) + 1,
      kinds: [...new Set(outcome.evidence.map(({ kind }) => kind))],
      lessons: lessons.flatMap(({ lesson, claims }) =>
        claims
          .filter((claim) => claim.fault === null && claim.outcome === outcome.id)
          .map(({ grade }) => ({ lesson, grade })),
      ),
    }));
    const bands = (row: ListedOutcome): readonly Band[] =>
      bandsOf(curricula, framework.id, row.outcome.stage);
    const groups = groupBy(listed, (row) => bands(row).join(' ')).map((rows): AgeGroup => ({
      bands: rows[0] === undefined ? [] : bands(rows[0]),
      subjects: groupBy(rows, ({ outcome }) => outcome.subject)
        .map((outcomes) => ({ subject: outcomes[0]?.outcome.subject ?? '', outcomes }))
        .toSorted((a, b) => (a.subject < b.subject ? -1 : 1)),
    }));
    return { framework, groups: groups.toSorted(byAge) };
  });
}
