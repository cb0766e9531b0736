/** Answers that are waited for, each known by the number of its question. */
export interface Awaited<Value> {
  readonly wait: (number: number) => Promise<Value>;
  /** False where nobody waits for an answer of that number. */
  readonly answered: (number: number, value: Value) => boolean;
}

/** @example const pages = awaited<string>(); pages.wait(1); pages.answered(1, 'a page') // true */
export function awaited<Value>(): Awaited<Value> {
  const asked = new Map<number, (value: Value) => void>();
  return {
    wait: (number) =>
      new Promise((answer) => {
        asked.set(number, answer);
      }),
    answered: (number, value) => {
      const answer = asked.get(number);
      asked.delete(number);
      answer?.(value);
      return answer !== undefined;
    },
  };
}
