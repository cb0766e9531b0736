import type { Day, DayPlan, Doing } from '../../shared/day/index.ts';
import type { dayNow, dayPapers } from '../../shared/words/en/day-papers.ts';
import type { daySheet, dayForm } from '../../shared/words/en/day-sheet.ts';
import type { Template } from '../../shared/words/index.ts';

/** The words of the page, handed to the island as plain data. */
export type SheetWords = Readonly<Record<keyof typeof daySheet, Template>>;
export type PaperWords = Readonly<Record<keyof typeof dayPapers, Template>>;
export type NowWords = Readonly<Record<keyof typeof dayNow, Template>>;
export type FormWords = Readonly<Record<keyof typeof dayForm, Template>>;

/** A day that comes with the site, to begin from. */
export interface DemoDay {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

/** What a group does, as it stands in a table. */
export function tellDoing(
  day: Day,
  doing: Doing | undefined,
  words: Pick<SheetWords, 'lunch' | 'free' | 'away'>,
): Template {
  if (doing === undefined) return words.away;
  return doing.kind === 'station' ? (day.stations[doing.station]?.name ?? '') : words[doing.kind];
}

/** True where a lead has fixed this slot of this group. */
export const fixedIndex = (day: Day, group: number, slot: number): number =>
  day.fixed.findIndex((said) => said.group === group && said.slot === slot);

/** Groups at a station in a slot, by number. */
export const groupsAt = (plan: DayPlan, station: number, slot: number): readonly number[] =>
  [...plan.groups.keys()].filter((group) => {
    const doing = plan.groups[group]?.[slot];
    return doing?.kind === 'station' && doing.station === station;
  });

/** Adults at a station in a slot, by number. */
export const adultsAt = (plan: DayPlan, station: number, slot: number): readonly number[] =>
  [...plan.crew.keys()].filter((adult) => plan.crew[adult]?.[slot] === station);

/** Gives a file to whoever asked for it, made on this device. */
export function saveAs(name: string, type: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** A title as the name of a file. @example fileName('A day!') // 'a-day' */
export const fileName = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'day';
