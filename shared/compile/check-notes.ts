import { nearest, type Fault, type Path, type WrittenNotes } from '../lesson/index.ts';
import type { NotesRow, NotesRows } from '../library/index.ts';
import { shapeWords } from '../words/en/problems.ts';

const WHERE = 'in content/notes.yaml';

function unknownRow(written: string, rows: readonly NotesRow[], path: Path): readonly Fault[] {
  const known = rows.map(({ id }) => id);
  if (known.includes(written)) return [];
  const near = nearest(written, known);
  return [
    {
      code: 'word-unknown',
      grade: 'error',
      path,
      ...shapeWords.unknownWord(written, near, known, WHERE),
      ...(near === null ? {} : { replacement: near }),
    },
  ];
}

/** Rows of ours that a lead names in `notes` and that there are not: to leave out, or to put another in their place. */
export function notesFaults(written: WrittenNotes, rows: NotesRows): readonly Fault[] {
  const all = [...rows.kit, ...rows.talk, ...rows.misconceptions, ...rows.adaptations];
  const ofList = (list: 'talk' | 'misconceptions' | 'adaptations'): readonly Fault[] =>
    (written[list] ?? []).flatMap(({ id }, index) =>
      id === undefined ? [] : unknownRow(id, rows[list], ['notes', list, index, 'id']),
    );
  return [
    ...(written['leave-out'] ?? []).flatMap((id, index) =>
      unknownRow(id, all, ['notes', 'leave-out', index]),
    ),
    ...ofList('talk'),
    ...ofList('misconceptions'),
    ...ofList('adaptations'),
  ];
}
