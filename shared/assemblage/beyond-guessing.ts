/** One thing asked: what the record says, and how often each answer was given (1 for one pupil, a count for hands up). */
export interface AskedItem<Answer extends string> {
  readonly record: Answer;
  readonly said: Readonly<Partial<Record<Answer, number>>>;
}

/** Agreement beyond guessing, with what it was made from. */
export interface BeyondGuessing {
  /** 0 at guessing, 1 at the record, below 0 where guessing would do better; null where nothing can be told apart. */
  readonly score: number | null;
  /** Why there is no score: nothing was asked, or the record gives the same answer throughout. */
  readonly reason: 'no-items' | 'one-answer' | null;
  /** The mean share (0 to 1) that guessing gets right: one over the answers that the record uses. */
  readonly guess: number | null;
  /** The mean, over the answers that the record uses, of the share right where that is the answer. */
  readonly agreement: number | null;
  /** By answer: how many items have it in the record, and how many of those were said right. */
  readonly working: readonly { readonly answer: string; readonly items: number; readonly right: number }[];
  /** Items nobody answered: they count as guessing would. */
  readonly open: number;
}

/**
 * The mean of the shares right, answer by answer, beyond what answering blindly gets.
 *
 * Each answer of the record weighs the same, so saying one thing throughout, answering by chance in any proportions, and leaving
 * items out all come to exactly 0 on average. Offer only answers that the record uses: others are simply wrong.
 * Source: Youden 1950, Cancer 3: 32-35, for two answers; for more, balanced accuracy scaled by chance (as scikit-learn's
 * `balanced_accuracy_score(adjusted=True)`).
 * @example beyondGuessing([{ record: 'both', said: { both: 1 } }, { record: 'neither', said: { both: 1 } }]).score // 0
 */
export function beyondGuessing<Answer extends string>(items: readonly AskedItem<Answer>[]): BeyondGuessing {
  const answers = [...new Set(items.map((item) => item.record))];
  const guess = answers.length === 0 ? null : 1 / answers.length;
  let open = 0;
  const right = ({ record, said }: AskedItem<Answer>): number => {
    const all = Object.values<number | undefined>(said).reduce<number>(
      (total, count) => total + (count ?? 0),
      0,
    );
    if (all > 0) return (said[record] ?? 0) / all;
    open += 1;
    return guess ?? 0;
  };
  const working = answers.map((answer) => {
    const mine = items.filter((item) => item.record === answer);
    return { answer, items: mine.length, right: mine.reduce((total, item) => total + right(item), 0) };
  });
  if (guess === null) return { score: null, reason: 'no-items', guess, agreement: null, working, open };
  const agreement = working.reduce((total, row) => total + row.right / row.items, 0) / answers.length;
  if (guess === 1) return { score: null, reason: 'one-answer', guess, agreement, working, open };
  return { score: (agreement - guess) / (1 - guess), reason: null, guess, agreement, working, open };
}
