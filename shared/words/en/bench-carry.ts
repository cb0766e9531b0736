import type { Entry } from '../entry.ts';

/** What stands on the Bench for saving a visit as one file and opening one. What it says afterwards is in `visit-folder.ts`. */
export const benchCarry = {
  saveVisit: 'Save the visit as one file',
  saveShelf: 'Save the whole shelf',
  saveShelfLead: 'Every visit of this device in one file, with its finds and photographs: for safe keeping.',
  dropHere: 'Let go to open it on the Bench.',
  openHow: 'What can be opened: a lesson file (.md), or a visit saved as one file (.zip).',
  openDrop: 'It can be dropped anywhere on this page, too.',
  leftTitle: { one: '{count} file was left out', other: '{count} files were left out' },
  leftMore: { one: 'and {count} more', other: 'and {count} more' },
  close: 'Put this away',
  failed: 'That could not be done here ({because}). What you wrote is kept.',
} as const satisfies Readonly<Record<string, Entry>>;
