import { outline, type Outline } from '../../shared/bench/index.ts';
import { starterLesson } from '../../shared/words/en/command.ts';
import type { StepId } from '../../shared/words/en/bench-help.ts';
import type { OpenVisit } from '../stores/bench.ts';
import type { Checked } from './protocol.ts';

const starter = outline(starterLesson(''));

/** What of the ten steps can be seen to be done from the visit itself; the rest is noted as it is pressed. */
export function stepsDone(
  visit: OpenVisit | null,
  { head, parts }: Outline,
  checked: Checked | null,
  pressed: ReadonlySet<StepId>,
): ReadonlySet<StepId> {
  if (visit === null) return pressed;
  const title = head?.data?.['title'];
  const bands = head?.data?.['bands'];
  const words = parts.filter(({ part }) => part === 'prose');
  const starterWords = new Set(starter.parts.map((part) => (part.part === 'prose' ? part.text : '')));
  const seen: readonly (readonly [StepId, boolean])[] = [
    ['begin', true],
    ['title', typeof title === 'string' && title !== '' && title !== visit.name],
    ['bands', Array.isArray(bands) && bands.length > 0],
    ['finds', visit.files.length > 0],
    ['activity', parts.some(({ part }) => part === 'block')],
    ['words', words.some((part) => part.part === 'prose' && !starterWords.has(part.text))],
    ['mend', checked !== null && checked.text === visit.history.text && checked.problems.length === 0],
  ];
  return new Set([...pressed, ...seen.flatMap(([id, isDone]) => (isDone ? [id] : []))]);
}
