import * as z from 'zod';
import { makingWords } from '../words/en/making.ts';
import type { Fault } from '../lesson/problem.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES, type Status } from './status.ts';

/** A stretch of time a child can hold: "a school day". */
export interface Comparison {
  readonly id: string;
  readonly label: string;
  readonly hours: number;
  readonly status: Status;
  readonly source: string;
}

const comparisonsFile = z.strictObject({
  schema: z.literal('comparisons/1'),
  comparisons: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens'),
        label: z.string().min(1),
        hours: z.number().positive(),
        status: z.enum(STATUSES),
        source: z.string().min(1),
      }),
    )
    .min(2),
});

/** Reads the comparisons, which rise in hours from first to last. */
export function readComparisons(file: string, text: string): ReadFile<readonly Comparison[]> {
  const read = readYamlFile(file, text, comparisonsFile);
  if (read.value === null) return { ...read, value: null };
  const rows = read.value.comparisons;
  const faults = rows.flatMap(({ id, hours }, index): Fault[] => {
    const before = rows[index - 1];
    const path = ['comparisons', index];
    if (rows.findIndex((row) => row.id === id) < index) {
      return [
        {
          code: 'key-repeated',
          grade: 'error',
          path: [...path, 'id'],
          ...makingWords.idTwice(id, 'comparisons'),
        },
      ];
    }
    if (before === undefined || before.hours < hours) return [];
    return [
      {
        code: 'value-unfit',
        grade: 'error',
        path: [...path, 'hours'],
        ...makingWords.hoursFall(before.hours, hours),
      },
    ];
  });
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
  return { ...read, value: rows };
}
