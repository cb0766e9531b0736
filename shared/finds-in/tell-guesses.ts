import { FIELDS, type Field } from './fields.ts';
import type { RowIn } from './finds-in.ts';

/** How many finds have a value that no cell gave, with the rule most of them have it by. */
export interface GuessTold {
  readonly field: Field;
  readonly rows: number;
  readonly why: string;
}

/** What was guessed in a list, field by field: told once, so that it is not asked row by row. */
export function tellGuesses(rows: readonly RowIn[]): readonly GuessTold[] {
  return FIELDS.flatMap((field): readonly GuessTold[] => {
    const times = new Map<string, number>();
    let total = 0;
    for (const { guessed } of rows) {
      const why = guessed[field];
      if (why === undefined) continue;
      total += 1;
      times.set(why, (times.get(why) ?? 0) + 1);
    }
    const [commonest] = [...times].toSorted((a, b) => b[1] - a[1]);
    return commonest === undefined ? [] : [{ field, rows: total, why: commonest[0] }];
  });
}
