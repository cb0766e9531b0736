import { article } from './article.ts';
import { quoted } from './problems.ts';

interface Row {
  readonly outcome: string;
  readonly grade: string;
  readonly summary: string | null;
  readonly status: string | null;
  readonly claimed: boolean;
  readonly earned: boolean;
  readonly evidence: string | null;
  readonly why: string | null;
  readonly where: readonly {
    readonly title: string;
    readonly kind: string;
    readonly by: 'plan' | 'lead';
    readonly bands?: readonly string[];
  }[];
}

/** The reason a claim is not earned, as plain data. */
type Fault =
  | { readonly fault: 'unknown' | 'another-place' }
  | { readonly fault: 'another-people'; readonly because: string }
  | { readonly fault: 'wrong-stage'; readonly stage: string; readonly bands: readonly string[] }
  | {
      readonly fault: 'no-evidence';
      readonly wanted: readonly { readonly kind: string; readonly means: string }[];
    }
  | { readonly fault: 'beyond-band'; readonly needs: readonly string[]; readonly stage: string }
  | { readonly fault: 'grade-too-high'; readonly best: string };

const list = (words: readonly string[]): string => words.join(', ');

/** What the command line says of claims. */
export const claimReport = {
  why: (fault: Fault): string => {
    switch (fault.fault) {
      case 'unknown':
        return 'no framework here has this outcome';
      case 'another-place':
        return 'it is about a real place, and the site is invented';
      case 'another-people':
        return fault.because;
      case 'wrong-stage':
        return `it is for ${fault.stage}, which no band of this lesson is in`;
      case 'no-evidence':
        return `it would need ${fault.wanted.map(({ kind, means }) => `${article(kind)} ${kind} in which ${means}`).join(', or ')}`;
      case 'beyond-band':
        return `it needs ${list(fault.needs.map((need) => need.replaceAll('-', ' ')))}, which comes after ${fault.stage}`;
      case 'grade-too-high':
        return `the lesson goes no further than ${fault.best}`;
      default:
        return fault satisfies never;
    }
  },
  row: (row: Row): string => {
    const head = `${row.claimed ? (row.earned ? 'earned' : 'NOT EARNED') : 'could be claimed'}  ${row.outcome}  ${row.grade}`;
    const what = row.summary === null ? '' : `\n    ${row.summary} (${row.status ?? ''})`;
    const places = row.where.map(
      ({ kind, title, by, bands }) =>
        `\n    ${kind}, "${title}"${bands === undefined ? '' : `, at ages ${bands.join(', ')} only`}${by === 'lead' ? ', by the lead’s word' : ''}`,
    );
    const evidence = row.evidence === null ? '' : `\n    because ${row.evidence}`;
    const why = row.why === null ? '' : `\n    ${row.why}`;
    return `${head}${what}${places.join('')}${evidence}${why}\n`;
  },
  coverageHead: (name: string, covered: number, all: number): string =>
    `${name}: ${covered} of ${all} outcomes\n`,
  coveredRow: (id: string, lessons: readonly { readonly lesson: string; readonly grade: string }[]): string =>
    `  ${id}  ${lessons.map(({ lesson, grade }) => `${lesson} (${grade})`).join(', ')}\n`,
  gaps: (ids: readonly string[]): string => (ids.length === 0 ? '' : `  not met: ${list(ids)}\n`),
  frameworkUnknown: (written: string, near: string | null, known: readonly string[]): string =>
    `expected a framework (${list(known)}); received ${quoted(written)}${near === null ? '' : `. Did you mean ${near}?`}`,
  noLessons: (folder: string): string => `no lesson files in ${folder}\n`,
};
