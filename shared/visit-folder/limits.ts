import type { Limits } from '../zip/index.ts';

/** As much as is taken in at once: more than ten sites with all the photographs they may have. ASM. */
export const MOST_AT_ONCE: Limits = { bytes: 30_000_000, files: 1000 };
/** As large as a zip may be: what tells of its files comes on top. ASM. */
export const MOST_ZIP_BYTES = 31_000_000;
/** As long as a lesson file may be, in bytes: the parser reads it at every rest of typing. ASM. */
export const MOST_LESSON_BYTES = 1_000_000;
