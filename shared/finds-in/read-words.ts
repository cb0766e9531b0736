import * as z from 'zod';
import { readYamlFile, type ReadFile } from '../library/read-yaml-file.ts';
import { STATUSES } from '../library/status.ts';
import { FIELDS } from './fields.ts';

const known = {
  language: z.string().regex(/^[a-z]{2}$/),
  status: z.enum(STATUSES),
  words: z.array(z.string()),
};

const meaning = z.strictObject({
  /** Values of the vocabulary it can stand for, the likeliest first. */
  means: z.array(z.string()).min(1),
  sure: z.enum(['yes', 'ask', 'no']),
  ...known,
});

const millimetres = z.number().positive();

const wordsFile = z.strictObject({
  columns: z.array(z.strictObject({ field: z.enum(FIELDS), ...known })),
  'object-types': z.array(meaning),
  materials: z.array(meaning),
  ages: z.array(meaning),
  states: z.array(meaning),
  'not-recorded': z.array(z.string()),
  totals: z.array(z.string()),
  people: z.array(z.string()),
  types: z.array(
    z.strictObject({
      type: z.string(),
      materials: z.array(z.string()).min(1),
      'made-by': z.string(),
      'used-for': z.string(),
      ages: z.array(z.string()).min(1),
      state: z.string(),
      'size-mm': z.tuple([millimetres, millimetres, millimetres]),
      'length-mm': z.tuple([millimetres, millimetres]),
    }),
  ),
});

/** The words of other people's lists, and what is usual for each type of object. */
export type FindsInWords = z.output<typeof wordsFile>;
export type Meaning = z.output<typeof meaning>;
export type UsualType = FindsInWords['types'][number];

/** Reads `finds-in/words.yaml` of a content folder. */
export const readFindsInWords = (file: string, text: string): ReadFile<FindsInWords> =>
  readYamlFile(file, text, wordsFile);
