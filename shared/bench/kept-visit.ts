import * as z from 'zod/mini';
import type { ContentFile } from '../library/read-content.ts';
import type { Taking } from './taking.ts';

/** The version of what is written today. */
export const KEPT_VERSION = 3;

/** A visit as a device keeps it: the lesson file and the lead's own finds, nothing of anybody. */
export interface KeptVisit {
  readonly mark: 'pitlore-visit';
  readonly version: typeof KEPT_VERSION;
  readonly id: string;
  /** What its file is called, without the ending. */
  readonly name: string;
  readonly text: string;
  readonly files: readonly ContentFile[];
  /** The names of the lead's own photographs: their bytes are kept beside the visit, so that a typed sign does not write them anew. */
  readonly photos: readonly string[];
  /** The last finds list taken in, to be taken back by one press; null where there is none. */
  readonly taking: Taking | null;
  /** Earlier texts, newest last. */
  readonly past: readonly string[];
  /** ISO 8601. */
  readonly changed: string;
}

const versionOne = z.object({
  id: z.string(),
  name: z.string(),
  text: z.string(),
  changed: z.string(),
});

const file = z.object({ path: z.string(), file: z.string(), text: z.string() });

const versionTwo = z.object({
  ...versionOne.shape,
  files: z.array(file),
  past: z.array(z.string()),
});

const taking = z.object({
  site: z.string(),
  finds: z.number(),
  before: z.array(file),
  wrote: z.array(z.object({ path: z.string(), mark: z.string() })),
});

const versionThree = z.object({
  ...versionTwo.shape,
  photos: z.array(z.string()),
  taking: z._default(z.nullable(taking), null),
});

/** What each version wrote, the oldest first. */
const VERSIONS = [versionOne, versionTwo, versionThree];

const marked = z.object({ mark: z.literal('pitlore-visit'), version: z.number() });

/** A kept visit as read, or why it is not: made by a later version of the program, or no visit at all. */
export type ReadKept =
  { readonly visit: KeptVisit } | { readonly visit: null; readonly fault: 'later' | 'unreadable' };

/**
 * Reads what was kept, by this version or an earlier one. Version 1 had one text and nothing beside it; version 2 had no photographs.
 *
 * @example readKept({ mark: 'pitlore-visit', version: 9 }).visit // null
 */
export function readKept(given: unknown): ReadKept {
  const head = marked.safeParse(given);
  if (!head.success) return { visit: null, fault: 'unreadable' };
  if (head.data.version > KEPT_VERSION) return { visit: null, fault: 'later' };
  const read = VERSIONS[head.data.version - 1]?.safeParse(given);
  if (read?.success !== true) return { visit: null, fault: 'unreadable' };
  return {
    visit: {
      files: [],
      photos: [],
      past: [],
      taking: null,
      ...read.data,
      mark: 'pitlore-visit',
      version: KEPT_VERSION,
    },
  };
}
