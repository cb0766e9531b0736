import * as z from 'zod';
import { nearest } from '../lesson/nearest.ts';
import type { Fault } from '../lesson/problem.ts';
import { notesWords } from '../words/en/notes-problems.ts';
import { shapeWords } from '../words/en/problems.ts';
import type { NotesRow, NotesRows } from './notes-rows.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { sourceFaults } from './source-faults.ts';
import { STATUSES } from './status.ts';

const row = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens'),
  kinds: z.array(z.string()).min(1).optional(),
  words: z.array(z.string()).min(1).optional(),
  status: z.enum(STATUSES),
  source: z.string(),
  also: z.array(z.string()).min(1).optional(),
});
const sentence = z.string().min(1).max(400);

const notesFile = z.strictObject({
  schema: z.literal('notes/1'),
  kit: z.array(row.extend({ text: sentence })),
  talk: z.array(row.extend({ ask: sentence, argue: sentence })),
  misconceptions: z.array(row.extend({ thought: sentence, reply: sentence })),
  adaptations: z.array(row.extend({ for: sentence, do: sentence })),
});

/** What rows may point to. */
export interface NotesKnown {
  readonly kinds: readonly string[];
  /** The words of the glossary. */
  readonly words: readonly string[];
  /** The ids of the sources. */
  readonly sources: readonly string[];
}

type Written = z.output<typeof notesFile>;
type WrittenRow = z.output<typeof row>;
const LISTS = ['kit', 'talk', 'misconceptions', 'adaptations'] as const;

const unknown = (
  written: readonly string[] | undefined,
  known: readonly string[],
  path: Fault['path'],
  where: string,
): readonly Fault[] =>
  (written ?? []).flatMap((word, index): readonly Fault[] => {
    if (known.includes(word)) return [];
    const near = nearest(word, known);
    return [
      {
        code: 'word-unknown',
        grade: 'error',
        path: [...path, index],
        ...shapeWords.unknownWord(word, near, known, where),
        ...(near === null ? {} : { replacement: near }),
      },
    ];
  });

function rowFaults(file: Written, known: NotesKnown): readonly Fault[] {
  const seen = new Set<string>();
  return LISTS.flatMap((list) =>
    file[list].flatMap(({ id, kinds, words, source, also = [] }, index): readonly Fault[] => {
      const path = [list, index];
      const isRepeated = seen.has(id);
      seen.add(id);
      const repeated: readonly Fault[] = isRepeated
        ? [{ code: 'id-repeated', grade: 'error', path: [...path, 'id'], ...notesWords.idTwice(id) }]
        : [];
      return [
        ...repeated,
        ...unknown(kinds, known.kinds, [...path, 'kinds'], 'in content/claim-rules.yaml'),
        ...unknown(words, known.words, [...path, 'words'], 'in content/glossary.yaml'),
        ...sourceFaults([{ path: [...path, 'source'], source }], known.sources),
        ...sourceFaults(
          also.map((other, place) => ({ path: [...path, 'also', place], source: other })),
          known.sources,
        ),
      ];
    }),
  );
}

const known = ({ id, kinds, words, status, source, also }: WrittenRow): NotesRow => ({
  id,
  kinds: kinds ?? [],
  words: words ?? [],
  status,
  sources: [source, ...(also ?? [])],
});

/** Reads what teacher notes are made from: every id once, and every kind, word and source one that there is. */
export function readNotes(file: string, text: string, may: NotesKnown): ReadFile<NotesRows> {
  const read = readYamlFile(file, text, notesFile);
  if (read.value === null) return { ...read, value: null };
  const faults = rowFaults(read.value, may);
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
  const { kit, talk, misconceptions, adaptations } = read.value;
  return {
    ...read,
    value: {
      kit: kit.map((each) => ({ ...known(each), text: each.text })),
      talk: talk.map((each) => ({ ...known(each), ask: each.ask, argue: each.argue })),
      misconceptions: misconceptions.map((each) => ({
        ...known(each),
        thought: each.thought,
        reply: each.reply,
      })),
      adaptations: adaptations.map((each) => ({ ...known(each), for: each.for, do: each.do })),
    },
  };
}
