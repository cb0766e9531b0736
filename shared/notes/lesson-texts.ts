import { sheetsOf, shownFinds, type Activity } from '../activities/index.ts';
import type { Plan } from '../compile/index.ts';
import type { Vocabulary } from '../library/index.ts';

/** Parts of a sheet that are no text to a reader: names of drawings, ids, and the figures behind an answer. */
const NO_TEXT: ReadonlySet<string> = new Set([
  'bands',
  'by',
  'citations',
  'drawing',
  'edge',
  'exposure',
  'find',
  'good',
  'id',
  'is',
  'line',
  'part',
  'record',
  'sense',
  'source',
  'strip',
  'table',
  'trials',
  'used',
]);

/** Sheets that are read when all has been said. */
const AFTER = /(?:answers?|notes)$/;

/** Every text a value holds, in order. */
function textsWithin(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsWithin);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (NO_TEXT.has(key) ? [] : textsWithin(inner)));
}

const ENTITIES: Readonly<Record<string, string>> = { '#x26': '&', '#x3C': '<', amp: '&', lt: '<', gt: '>' };

/** Prose as it is read, without its marks. @example plainText('<p>A <em>pit</em></p>') // 'A pit' */
export const plainText = (html: string): string =>
  html
    .replaceAll(/<\/?(?:p|li|ul|ol|h\d|blockquote|br|td|th|tr)\b[^>]*>/g, ' ')
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll(/&([#\w]+);/g, (whole, name: string) => ENTITIES[name] ?? whole)
    .replaceAll(/\s+/g, ' ')
    .trim();

/** What a pupil reads of an activity before they answer: its title, its question, trays, steps, cards. */
export function textsBefore(activity: Activity): readonly string[] {
  const sheets = sheetsOf(activity).filter(({ part }) => !AFTER.test(part));
  const question = 'question' in activity && typeof activity.question === 'string' ? [activity.question] : [];
  return [activity.title, ...question, ...textsWithin(sheets)];
}

/** What the record adds: answers and reasons, and the names and materials of the things shown. */
function textsAfter(activity: Activity, vocabulary: Vocabulary): readonly string[] {
  const sheets = sheetsOf(activity).filter(({ part }) => AFTER.test(part));
  const finds = shownFinds(activity);
  const shown = new Set(finds.flatMap(({ objectType, material }) => [objectType, material]));
  const labels = [...vocabulary.objectTypes, ...vocabulary.materials]
    .filter(({ id }) => shown.has(id))
    .map(({ label }) => label);
  return [...labels, ...textsWithin(sheets)];
}

/** Every text of a lesson: prose, then activities, before and after the answers. */
export const lessonTexts = (plan: Plan, vocabulary: Vocabulary): readonly string[] => [
  ...plan.parts.flatMap((part) => (part.part === 'prose' ? [plainText(part.html)] : [])),
  ...plan.activities.flatMap((activity) => textsBefore(activity)),
  ...plan.activities.flatMap((activity) => textsAfter(activity, vocabulary)),
];
