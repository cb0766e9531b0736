import type { Sheet } from '../kind.ts';
import type { SortActivity } from './activity.ts';

/** A sort on paper: cards to cut out, a sheet to sort on, the answers with their reasons. */
export function paperSort(activity: SortActivity): readonly Sheet[] {
  const { title, question } = activity;
  const byNumber = activity.finds.toSorted((a, b) => a.smallFind - b.smallFind);
  const trayName = (id: string): string => activity.trays.find((tray) => tray.id === id)?.name ?? id;
  return [
    {
      part: 'cards',
      title,
      cards: byNumber.map(({ id, smallFind, plain, drawing }) => ({ id, number: smallFind, plain, drawing })),
    },
    {
      part: 'pupil-sheet',
      title,
      question,
      boxes: activity.ownTrays
        ? Array.from({ length: 4 }, () => ({ name: '', hint: '' }))
        : activity.trays.map(({ name, hint }) => ({ name, hint })),
      numbers: byNumber.map(({ smallFind }) => smallFind),
    },
    {
      part: 'answers',
      title,
      question,
      isOpen: activity.ownTrays,
      rows: byNumber.map(({ smallFind, name, drawing, homes, note, attributes }) => ({
        number: smallFind,
        name,
        drawing,
        answer:
          homes[0] === undefined ? attributes[activity.by].replaceAll('-', ' ') : trayName(homes[0].tray),
        because: homes[0]?.because ?? '',
        note,
        also: homes.slice(1).map(({ tray, because }) => ({ answer: trayName(tray), because })),
      })),
    },
  ];
}
