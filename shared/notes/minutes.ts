import { isScored } from '../activities/index.ts';
import type { Plan } from '../compile/index.ts';
import { duringLine } from '../telling/notes-line.ts';
import { catalogues } from '../words/index.ts';
import { cell, quiet, text, type NotesCell, type NotesSection } from './blocks.ts';
import { plainText } from './lesson-texts.ts';

const words = catalogues.en.notes;

/** Words a minute when reading aloud to a group, with pauses to look. ASM. */
const WORDS_A_MINUTE = 100;

/**
 * The minutes of a lesson outside its activities, divided: the opening takes what reading it aloud takes and one minute
 * more, at most half; the rest is for the end.
 *
 * @param left Minutes left over by the activities.
 * @example divideRest(10, 120) // { opening: 3, closing: 7 }
 */
export function divideRest(
  left: number,
  openingWords: number,
): { readonly opening: number; readonly closing: number } {
  if (openingWords === 0) return { opening: 0, closing: left };
  const opening = Math.min(Math.floor(left / 2), 1 + Math.ceil(openingWords / WORDS_A_MINUTE));
  return { opening, closing: left - opening };
}

/** Words of the prose before the first activity. */
function openingLength(plan: Plan): number {
  const first = plan.parts.findIndex(({ part }) => part === 'activity');
  const before = first === -1 ? plan.parts : plan.parts.slice(0, first);
  return before
    .flatMap((part) => (part.part === 'prose' ? plainText(part.html).split(/\s+/) : []))
    .filter((word) => word !== '').length;
}

/** Before, during and after, with minutes that add up to the lesson's. */
export function minutesSection(plan: Plan): NotesSection {
  const busy = plan.activities.reduce((total, { minutes }) => total + minutes, 0);
  const left = Math.max(0, plan.minutes - busy);
  const { opening, closing } = divideRest(left, openingLength(plan));
  const row = (when: string, minutes: number | null, what: string, more: readonly string[] = []) => [
    cell(when),
    cell(minutes === null ? '–' : String(minutes)),
    cell(what, more),
  ];
  const rows: (readonly NotesCell[])[] = [
    row(words.before, null, words.beforeText),
    ...(opening === 0 ? [] : [row(words.during, opening, words.opening)]),
    ...plan.activities.map((activity) =>
      row(words.during, activity.minutes, activity.title, [duringLine(activity.kind)]),
    ),
    ...(closing === 0
      ? []
      : [row(words.after, closing, plan.activities.some(isScored) ? words.closing : words.closingOpen)]),
    row(words.whole, opening + busy + closing, ''),
  ];
  return {
    id: 'minutes',
    title: words.minutesTitle,
    blocks: [
      {
        block: 'table',
        heads: [words.minutesWhen, words.minutesMinutes, words.minutesWhat],
        rows,
        narrow: [0, 1],
      },
      left === 0 ? text(words.noSlack) : quiet(words.slackHow),
    ],
  };
}
