import * as z from 'zod';
import type { GlossaryWord } from '../glossary/index.ts';
import type { Fault } from '../lesson/problem.ts';
import { glossaryWords } from '../words/en/notes-problems.ts';
import { sourceFaults } from './source-faults.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const shape = z.string().min(1).max(40);

const glossaryFile = z.strictObject({
  schema: z.literal('glossary/1'),
  status: z.enum(STATUSES),
  source: z.string(),
  words: z
    .array(
      z.strictObject({
        word: shape,
        forms: z.array(shape).optional(),
        alone: z.array(shape).optional(),
        younger: z.string().min(1).max(160),
        older: z.string().min(1).max(240),
        status: z.enum(STATUSES).optional(),
        source: z.string().optional(),
      }),
    )
    .min(1),
});

type Row = z.output<typeof glossaryFile>['words'][number];

/** A shape that two rows claim would show two meanings for one word. */
function repeatedShapes(rows: readonly Row[]): readonly Fault[] {
  const seen = new Map<string, string>();
  return rows.flatMap(({ word, forms = [], alone = [] }, index) => {
    const shapes = [
      { text: word, path: ['word'] },
      ...forms.map((text, place) => ({ text, path: ['forms', place] })),
      ...alone.map((text, place) => ({ text, path: ['alone', place] })),
    ];
    return shapes.flatMap(({ text, path }): readonly Fault[] => {
      const plain = text.toLowerCase();
      const owner = seen.get(plain);
      seen.set(plain, owner ?? word);
      // A word may be its own name alone and in a sentence; two rows may not share one.
      if (owner === undefined || owner === word) return [];
      return [
        {
          code: 'key-repeated',
          grade: 'error',
          path: ['words', index, ...path],
          ...glossaryWords.shapeTwice(text, owner),
        },
      ];
    });
  });
}

/**
 * Reads the words of the trade, each shape of a word once in the whole file.
 *
 * @param sources The ids of the sources there are.
 */
export function readGlossary(
  file: string,
  text: string,
  sources: readonly string[],
): ReadFile<readonly GlossaryWord[]> {
  const read = readYamlFile(file, text, glossaryFile);
  if (read.value === null) return { ...read, value: null };
  const { words, status, source } = read.value;
  const faults = [
    ...repeatedShapes(words),
    ...sourceFaults(
      [
        { path: ['source'], source },
        ...words.flatMap((row, index) =>
          row.source === undefined ? [] : [{ path: ['words', index, 'source'], source: row.source }],
        ),
      ],
      sources,
    ),
  ];
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
  const value = words.map((row) => ({
    word: row.word,
    forms: row.forms ?? [],
    alone: row.alone ?? [],
    younger: row.younger,
    older: row.older,
    status: row.status ?? status,
    source: row.source ?? source,
  }));
  return { ...read, value };
}
