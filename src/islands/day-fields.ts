import { SETTINGS, STATION_KINDS } from '../../shared/safety/index.ts';
import type { FormWords } from './day-view.ts';

/** How a value of a day file is written in a form. */
export type FieldKind =
  'text' | 'long' | 'number' | 'time' | 'date' | 'words' | 'slots' | 'stations' | 'yes' | 'pick';

/** One field of an entry: its key in the file, how it is written, and what it is called. */
export interface Field {
  readonly key: string;
  readonly kind: FieldKind;
  readonly label: keyof FormWords;
  /** The value that stands for nothing said, so that a press on it takes the key away. */
  readonly silent?: unknown;
  /** What is written for a yes, where it is not `true`. */
  readonly yes?: string;
  /** The words there are to pick from, as they stand in a file. */
  readonly choices?: readonly string[];
}

const field = (key: string, kind: FieldKind, label: keyof FormWords, more: Partial<Field> = {}): Field => ({
  key,
  kind,
  label,
  ...more,
});

export const dayFields: readonly Field[] = [
  field('title', 'text', 'title'),
  field('date', 'date', 'date'),
  field('gate', 'text', 'gate'),
  field('setting', 'pick', 'setting', { choices: SETTINGS }),
  field('must-see', 'stations', 'must-see'),
  field('late-walks', 'yes', 'late-walks', { silent: false }),
  field('note', 'long', 'note'),
];

export const slotFields: readonly Field[] = [field('from', 'time', 'from'), field('to', 'time', 'to')];

export const lunchFields: readonly Field[] = [
  field('places', 'number', 'places'),
  field('place', 'text', 'place'),
  field('slots', 'slots', 'lunchSlots'),
];

export const groupFields: readonly Field[] = [
  field('name', 'text', 'name'),
  field('pupils', 'number', 'pupils'),
  field('ages', 'text', 'ages'),
  field('arrives', 'time', 'arrives'),
  field('leaves', 'time', 'leaves'),
  field('lunch', 'yes', 'groupLunch', { silent: true }),
  field('must-see', 'stations', 'own-must-see'),
];

export const stationFields: readonly Field[] = [
  field('name', 'text', 'name'),
  field('place', 'text', 'place'),
  field('pupils', 'number', 'holds'),
  field('groups', 'number', 'groupsAtOnce'),
  field('from-age', 'number', 'from-age'),
  field('adults', 'number', 'adultsNeeded'),
  field('skill', 'text', 'skill'),
  field('kind', 'pick', 'kind', { choices: STATION_KINDS }),
  field('sheets', 'number', 'sheets'),
  field('kit', 'words', 'kit'),
  field('wet', 'yes', 'wet', { silent: false, yes: 'shut' }),
  field('shut', 'slots', 'shut'),
];

export const adultFields: readonly Field[] = [
  field('role', 'text', 'role'),
  field('skills', 'words', 'skills'),
  field('most-in-a-row', 'number', 'most-in-a-row'),
  field('lunch', 'yes', 'adultLunch', { silent: false }),
  field('free', 'slots', 'free'),
];

export const walkFields: readonly Field[] = [
  field('from', 'text', 'from'),
  field('to', 'text', 'to'),
  field('minutes', 'number', 'minutes'),
];

/** What stands in a map of the file, or nothing. */
export const mapOf = (value: unknown): Readonly<Record<string, unknown>> =>
  // A record by its test: no list, not null.
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : {};

export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** A single value as it is shown in an input. */
export const shown = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';

/** What is to be written for what was typed; undefined where the key is to go. */
export function typed(kind: FieldKind, text: string): unknown {
  const said = text.trim();
  if (said === '') return undefined;
  if (kind === 'number') return /^\d{1,6}$/.test(said) ? Number(said) : said;
  if (kind === 'words') {
    return said
      .split(',')
      .map((word) => word.trim())
      .filter((word) => word !== '');
  }
  return said;
}
