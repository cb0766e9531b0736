import type { FreeSteps } from '../activities/index.ts';
import { say, type Template } from '../words/index.ts';

/** Names in quotation marks, as a list in a sentence. */
export const quotedList = (names: readonly string[]): string =>
  new Intl.ListFormat('en').format(names.map((name) => `“${name}”`));

/** Which steps may change places with one, and what holds them. */
export function freeSentence(
  words: Readonly<Record<'free' | 'freeAfter' | 'freeBefore', Template>>,
  { step, others, bothAfter, bothBefore }: FreeSteps,
): string {
  return [
    say(words.free, { step, others: quotedList(others) }),
    ...(bothAfter.length === 0 ? [] : [say(words.freeAfter, { steps: quotedList(bothAfter) })]),
    ...(bothBefore.length === 0 ? [] : [say(words.freeBefore, { steps: quotedList(bothBefore) })]),
  ].join(' ');
}
