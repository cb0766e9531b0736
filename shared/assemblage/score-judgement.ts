import { beyondGuessing, type AskedItem, type BeyondGuessing } from './beyond-guessing.ts';
import type { ChanceTally } from './tally.ts';

/** Could chance alone do this? */
export const JUDGEMENTS = ['chance-could', 'chance-hardly'] as const;

export type Judgement = (typeof JUDGEMENTS)[number];

/** Rarer than once in twenty is called hardly chance. Source: convention of Fisher 1925, Statistical Methods for Research Workers, section 12. */
const HARDLY = 0.05;

/** What the record says of a tally. A rare chance says "not this chance", not "on purpose". */
export const judge = ({ chance }: Pick<ChanceTally, 'chance'>): Judgement =>
  chance <= HARDLY ? 'chance-hardly' : 'chance-could';

/** One question asked twice: before any shuffle, and after the pile has grown. */
export interface JudgedItem {
  readonly record: Judgement;
  readonly before: AskedItem<Judgement>['said'];
  readonly after: AskedItem<Judgement>['said'];
}

export interface JudgementScore {
  /** What is scored: the judgement after looking. */
  readonly after: BeyondGuessing;
  /** The same of the judgement before; for showing what the shuffles taught, not for the score. */
  readonly before: BeyondGuessing;
  /** After less before; null where either has no score. */
  readonly gain: number | null;
}

/**
 * Scores judgements of chance. The record must hold both answers among the questions: where it says the same throughout there
 * is no score, since saying so blindly would be right.
 */
export function scoreJudgement(items: readonly JudgedItem[]): JudgementScore {
  const before = beyondGuessing(items.map((item) => ({ record: item.record, said: item.before })));
  const after = beyondGuessing(items.map((item) => ({ record: item.record, said: item.after })));
  const gain = after.score === null || before.score === null ? null : after.score - before.score;
  return { after, before, gain };
}

/** One score from parts, each 0 at guessing and 1 at the record: their mean, parts without a score left out; null where none has. */
export function meanScore(parts: readonly { readonly score: number | null }[]): number | null {
  const scores = parts.flatMap(({ score }) => (score === null ? [] : [score]));
  return scores.length === 0 ? null : scores.reduce((total, score) => total + score, 0) / scores.length;
}
