import { atom } from 'nanostores';

/** The sheets that may be shown and printed. */
export const SHEETS = ['all', 'whole', 'wall', 'groups', 'stations', 'adults'] as const;
export type SheetChoice = (typeof SHEETS)[number];

/** Which sheets are shown and printed. */
export const $sheets = atom<SheetChoice>('all');
export const chooseSheets = (choice: SheetChoice): void => $sheets.set(choice);
