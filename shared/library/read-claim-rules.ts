import * as z from 'zod';
import type { AgeStep, Condition } from '../curriculum/index.ts';
import { BANDS } from './bands.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const condition = z
  .strictObject({
    id: z.string(),
    means: z.string(),
    'seen-by': z.enum(['plan', 'lead']),
    needs: z.array(z.string()).optional(),
    'real-place': z.boolean().optional(),
    'within-bce': z.strictObject({ from: z.int(), to: z.int() }).optional(),
    'count-most': z.record(z.string(), z.int()).optional(),
  })
  .transform((row): Condition => ({
    id: row.id,
    means: row.means,
    seenBy: row['seen-by'],
    needs: row.needs ?? [],
    realPlace: row['real-place'] ?? false,
    withinBce: row['within-bce'] ?? null,
    countMost: row['count-most'] ?? null,
  }));

const step = z
  .strictObject({
    id: z.string(),
    band: z.enum(BANDS),
    'whole-numbers-to': z.int(),
    'may-use': z.array(z.string()),
    note: z.string(),
    status: z.enum(STATUSES),
    stages: z.record(z.string(), z.array(z.string())),
    but: z
      .array(
        z.strictObject({
          framework: z.string(),
          stage: z.string(),
          add: z.array(z.string()),
          without: z.array(z.string()),
          note: z.string(),
        }),
      )
      .optional(),
  })
  .transform((row): AgeStep => ({
    id: row.id,
    band: row.band,
    wholeNumbersTo: row['whole-numbers-to'],
    mayUse: row['may-use'],
    note: row.note,
    status: row.status,
    stages: row.stages,
    but: row.but ?? [],
  }));

const rulesFile = z.strictObject({
  kinds: z.array(z.string()),
  conditions: z.array(condition),
  steps: z.array(step),
});

/** The conditions claims rest on, and what each step of age may be asked. */
export interface ClaimRules {
  /** The kinds of activity a rule may name, whether or not this copy of the product has them. */
  readonly kinds: readonly string[];
  readonly conditions: readonly Condition[];
  readonly steps: readonly AgeStep[];
}

/** Reads the rules by which claims are judged. */
export const readClaimRules = (file: string, text: string): ReadFile<ClaimRules> =>
  readYamlFile(file, text, rulesFile);
