import * as z from 'zod';
import type { Source } from './library.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const sourcesFile = z.strictObject({
  sources: z.array(
    z
      .strictObject({
        id: z.string(),
        citation: z.string().min(1),
        status: z.enum(STATUSES),
        'used-for': z.string().min(1),
      })
      .transform((source): Source => ({
        id: source.id,
        citation: source.citation,
        status: source.status,
        usedFor: source['used-for'],
      })),
  ),
});

/** Reads the list of sources. */
export function readSources(file: string, text: string): ReadFile<readonly Source[]> {
  const read = readYamlFile(file, text, sourcesFile);
  return { ...read, value: read.value?.sources ?? null };
}
