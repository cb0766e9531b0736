import type { Point } from './point.ts';

/** Every code a problem may carry: noun, then fault, sorted. Each has words in help and a broken file in the tests. */
export const PROBLEM_CODES = [
  'aim-held',
  'aim-only-given',
  'aim-unclear',
  'aim-unheld',
  'aim-unknown',
  'ask-unfit',
  'beyond-model',
  'block-empty',
  'block-nested',
  'block-unclosed',
  'bundle-over',
  'cell-unreadable',
  'chain-unfit',
  'claim-beyond-band',
  'claim-of-another-people',
  'claim-of-another-place',
  'claim-repeated',
  'claim-too-high',
  'claim-unknown',
  'claim-without-evidence',
  'claim-wrong-stage',
  'column-missing',
  'column-repeated',
  'column-unknown',
  'count-unfit',
  'dead-end-final',
  'door-never-opens',
  'figures-missing',
  'file-empty',
  'file-too-long',
  'find-broken',
  'find-homeless',
  'find-repeated',
  'find-unknown',
  'finds-look-alike',
  'finds-too-few',
  'finds-too-many',
  'gathering-unclear',
  'good-repeated',
  'good-unknown',
  'good-unused',
  'goods-too-few',
  'handling-refused',
  'head-missing',
  'head-unclosed',
  'home-needless',
  'html-refused',
  'id-repeated',
  'key-missing',
  'key-refused',
  'key-repeated',
  'key-unknown',
  'kind-unknown',
  'kinds-too-many',
  'link-unsafe',
  'mass-doubtful',
  'minutes-over',
  'minutes-under',
  'nesting-deep',
  'number-beyond-band',
  'par-over',
  'photo-unfit',
  'picture-refused',
  'pit-repeated',
  'pits-one-answer',
  'prose-tangled',
  'reading-hard',
  'return-spoils',
  'return-unheld',
  'row-ragged',
  'site-unknown',
  'source-unknown',
  'stance-repeated',
  'steps-alike',
  'steps-circular',
  'steps-too-many',
  'steps-unordered',
  'trader-idle',
  'trader-repeated',
  'traders-over',
  'traders-unfit',
  'tray-empty',
  'tray-overlap',
  'tray-repeated',
  'tray-unknown',
  'trays-too-many',
  'value-unfit',
  'visit-held',
  'visit-refused',
  'vouch-needless',
  'wants-rise',
  'word-unknown',
  'world-too-large',
  'world-trivial',
  'world-unmade',
  'world-unsolvable',
  'yaml-unreadable',
] as const;

export type ProblemCode = (typeof PROBLEM_CODES)[number];

/** An error stops its own lesson; a caution does not. */
export type ProblemGrade = 'error' | 'caution';

/** A mend that can be pressed: replace the text from one offset to another. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Something wrong in a file: where, what was expected, what stood there, how to put it right. */
export interface Problem {
  readonly code: ProblemCode;
  readonly grade: ProblemGrade;
  readonly file: string;
  readonly from: Point;
  readonly to: Point;
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
  readonly edit?: Edit;
}

/** A key or index on the way to a value: `['also', 0, 'tray']`. */
export type Path = readonly (string | number)[];

/** A problem that knows its place only as a path within a block or a file's data; the reader turns it into a {@link Problem}. */
export interface Fault {
  readonly code: ProblemCode;
  readonly grade: ProblemGrade;
  readonly path: Path;
  /** Point at the key itself, not at its value. */
  readonly atKey?: boolean;
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
  /** What to write instead of the value at `path` (or of the key, with `atKey`). */
  readonly replacement?: string;
}

/** True when a list holds something that stops its lesson. @example hasErrors([]) // false */
export const hasErrors = (problems: readonly { readonly grade: ProblemGrade }[]): boolean =>
  problems.some((problem) => problem.grade === 'error');

/** Orders problems by place, then by code, so that the same file always tells them alike. */
export const byPlace = (a: Problem, b: Problem): number =>
  a.from.offset - b.from.offset ||
  a.to.offset - b.to.offset ||
  (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);
