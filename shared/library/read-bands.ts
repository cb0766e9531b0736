import * as z from 'zod';
import { BANDS } from './bands.ts';
import type { BandLimits } from './library.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const count = z.int().min(1);

const bandsFile = z.strictObject({
  bands: z.array(
    z
      .strictObject({
        band: z.enum(BANDS),
        label: z.string(),
        'minutes-per-activity': count,
        'minutes-per-sitting': count,
        trays: count,
        finds: count,
        'seconds-per-find': count,
        'reads-alone': z.boolean(),
        'reading-grade-most': z.number().optional(),
        'words-per-sentence': count.optional(),
        status: z.enum(STATUSES),
      })
      .transform((limits): BandLimits => ({
        band: limits.band,
        label: limits.label,
        minutesPerActivity: limits['minutes-per-activity'],
        minutesPerSitting: limits['minutes-per-sitting'],
        trays: limits.trays,
        finds: limits.finds,
        secondsPerFind: limits['seconds-per-find'],
        readsAlone: limits['reads-alone'],
        readingGradeMost: limits['reading-grade-most'] ?? null,
        wordsPerSentence: limits['words-per-sentence'] ?? null,
        status: limits.status,
      })),
  ),
});

/** Reads the limits of each age band. */
export function readBands(file: string, text: string): ReadFile<readonly BandLimits[]> {
  const read = readYamlFile(file, text, bandsFile);
  return { ...read, value: read.value?.bands ?? null };
}
