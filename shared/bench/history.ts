/** A text with what it was before, newest last, and what was undone, newest last. */
export interface History {
  readonly text: string;
  readonly past: readonly string[];
  readonly future: readonly string[];
  /** What changed it last, and when, in milliseconds: typing on is one step to undo. */
  readonly last: { readonly cause: string; readonly at: number } | null;
}

const MOST_STEPS = 200;
/** Kept beside a visit: enough to go back on yesterday's mistake, little enough to write often. */
const MOST_KEPT = 30;
const ONE_STEP_MS = 1200;

export const begin = (text: string, past: readonly string[] = []): History => ({
  text,
  past,
  future: [],
  last: null,
});

/**
 * Writes a new text. Changes by one cause shortly after one another are one step to undo.
 *
 * @param cause What is being changed: `file`, or the place of a field.
 * @param at Now, in milliseconds.
 * @example undo(write(begin('a'), 'ab', 'file', 0)).text // 'a'
 */
export function write(history: History, text: string, cause: string, at: number): History {
  if (text === history.text) return history;
  const { last } = history;
  const isSameStep = last !== null && last.cause === cause && at - last.at < ONE_STEP_MS;
  return {
    text,
    past: isSameStep ? history.past : [...history.past, history.text].slice(-MOST_STEPS),
    future: [],
    last: { cause, at },
  };
}

/** One step back; the same history where there is none. */
export function undo(history: History): History {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    text: before,
    past: history.past.slice(0, -1),
    future: [...history.future, history.text],
    last: null,
  };
}

/** One step forward again; the same history where there is none. */
export function redo(history: History): History {
  const next = history.future.at(-1);
  if (next === undefined) return history;
  return {
    text: next,
    past: [...history.past, history.text],
    future: history.future.slice(0, -1),
    last: null,
  };
}

/** The steps that are kept beside a visit. */
export const keptPast = ({ past }: History): readonly string[] => past.slice(-MOST_KEPT);
